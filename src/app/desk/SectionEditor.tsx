import { lazy, Suspense, type ReactElement } from 'react';
import type { Entry } from '../../store/index.ts';

/** Each is loaded when its section is first opened. */
const FrontDesk = lazy(async () => ({ default: (await import('./fronts/FrontDesk.tsx')).FrontDesk }));
const CoverageDesk = lazy(async () => ({ default: (await import('./coverages/CoverageDesk.tsx')).CoverageDesk }));
const PressureDesk = lazy(async () => ({ default: (await import('./pressures/PressureDesk.tsx')).PressureDesk }));
const LookDesk = lazy(async () => ({ default: (await import('./looks/LookDesk.tsx')).LookDesk }));
const RoleDesk = lazy(async () => ({ default: (await import('./roles/RoleDesk.tsx')).RoleDesk }));

/** The editor of the entry that is chosen in a section's list. */
export function SectionEditor({ entry }: { readonly entry: Entry }): ReactElement {
  return <Suspense fallback={<p className="hint">…</p>}>{editorOf(entry)}</Suspense>;
}

function editorOf(entry: Entry): ReactElement {
  switch (entry.section) {
    case 'fronts':
      return <FrontDesk id={entry.id} />;
    case 'coverages':
      return <CoverageDesk id={entry.id} />;
    case 'roles':
      return <RoleDesk id={entry.id} />;
    case 'pressures':
      return <PressureDesk id={entry.id} />;
    case 'looks':
      return <LookDesk id={entry.id} />;
  }
}
