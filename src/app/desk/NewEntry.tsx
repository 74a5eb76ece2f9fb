import type { ReactElement } from 'react';
import type { Entry, Section } from '../../store/index.ts';
import { NewCoverage } from './coverages/NewCoverage.tsx';
import { NewPressure } from './pressures/NewPressure.tsx';
import { NewFront } from './fronts/NewFront.tsx';
import { NewLook } from './looks/NewLook.tsx';
import { NewRole } from './roles/NewRole.tsx';

interface Props {
  readonly section: Section;
  readonly onMade: (entry: Entry) => void;
  readonly onClose: () => void;
}

/** Asks what a new entry of a section needs to begin with. */
export function NewEntry({ section, onMade, onClose }: Props): ReactElement {
  switch (section) {
    case 'fronts':
      return <NewFront onMade={onMade} onClose={onClose} />;
    case 'coverages':
      return <NewCoverage onMade={onMade} onClose={onClose} />;
    case 'roles':
      return <NewRole onMade={onMade} onClose={onClose} />;
    case 'pressures':
      return <NewPressure onMade={onMade} onClose={onClose} />;
    case 'looks':
      return <NewLook onMade={onMade} onClose={onClose} />;
  }
}
