import type { ReactElement } from 'react';
import { newCoverage, type Entry } from '../../../store/index.ts';
import { NameDialog } from '../../dialogs/NameDialog.tsx';
import { useMake } from '../parts/useMake.ts';

interface Props {
  readonly onMade: (entry: Entry) => void;
  readonly onClose: () => void;
}

/** Asks for the name of a new coverage. */
export function NewCoverage({ onMade, onClose }: Props): ReactElement {
  const make = useMake('coverages', onMade);
  return (
    <NameDialog
      title="New coverage"
      label="Name of the coverage"
      start=""
      action="Make it"
      onName={(name) => make(`made the coverage ${name}`, (now) => newCoverage(now, { name }))}
      onClose={onClose}
    />
  );
}
