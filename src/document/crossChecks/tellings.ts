import type { PreSnap, RuleJob, Who } from '../../engine/index.ts';
import type { Path } from '../refusal.ts';
import type { Playbook } from '../schema/playbook.ts';

/** One case of one telling, wherever it stands in a playbook. */
export interface PlacedCase {
  readonly path: Path;
  readonly job: RuleJob;
  readonly preSnap: PreSnap | null;
}

/** One telling of a coverage or a pressure, with the place of each case. */
export interface PlacedTell {
  readonly path: Path;
  readonly who: Who;
  readonly cases: readonly PlacedCase[];
}

/** Everything coverages and pressures tell anybody. */
export function tellings({ coverages, pressures }: Playbook): readonly PlacedTell[] {
  return [
    ...coverages.flatMap(({ tells }, index) =>
      tells.map(({ who, cases }, tell) =>
        placed(
          ['coverages', index, 'tells', tell],
          who,
          cases.map(({ job }) => ({ job, preSnap: null })),
        ),
      ),
    ),
    ...pressures.flatMap(({ tells }, index) =>
      tells.map(({ who, cases }, tell) => placed(['pressures', index, 'tells', tell], who, cases)),
    ),
  ];
}

function placed(
  path: Path,
  who: Who,
  cases: readonly { readonly job: RuleJob; readonly preSnap: PreSnap | null }[],
): PlacedTell {
  return {
    path,
    who,
    cases: cases.map(({ job, preSnap }, index) => ({ path: [...path, 'cases', index], job, preSnap })),
  };
}
