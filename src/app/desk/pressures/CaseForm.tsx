import type { ReactElement } from 'react';
import { TOLD_BASES, type PreSnap, type TellCase, type ToldBasis } from '../../../engine/index.ts';
import type { Change } from '../parts/change.ts';
import { Conditions } from '../parts/Conditions.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { OneOf } from '../parts/OneOf.tsx';
import { SIDES_WITH_CALL } from '../parts/SidePicker.tsx';
import { WhoPicker } from '../parts/WhoPicker.tsx';
import { JobFields, type FormParts } from './JobFields.tsx';
import { PRE_SNAP_LABELS } from './jobForms.ts';

interface Props extends FormParts {
  readonly told: TellCase;
  readonly onChange: Change<TellCase>;
}

/** One case of what a man is told, as a form. Every choice leaves it whole, so it can be kept at once. */
export function CaseForm(props: Props): ReactElement {
  const { told, of, words, disabled, onChange } = props;
  return (
    <>
      <JobFields {...props} job={told.job} onChange={(job) => onChange({ ...told, job }, null)} />
      <div className="rule-fields">
        <PreSnapFields {...props} />
        <OneOf
          wide
          label="It is"
          value={told.basis}
          items={TOLD_BASES.toReversed()}
          say={(basis) => BASIS_LABELS[basis]}
          hint="Where two rules differ, a man’s own path counts first, then a line movement, then what follows from others."
          disabled={disabled}
          onChoose={(basis) => onChange({ ...told, basis }, null)}
        />
      </div>
      <p className="part-label">Only if</p>
      <Conditions
        of={of}
        tests={told.when}
        sides={SIDES_WITH_CALL}
        words={words}
        disabled={disabled}
        onChange={(when, gesture) => onChange({ ...told, when }, gesture)}
      />
    </>
  );
}

const BASIS_LABELS: Readonly<Record<ToldBasis, string>> = {
  path: 'his own path',
  movement: 'a movement of the line',
  consequence: 'what follows from another man’s job',
};

const PRE_SNAPS = ['none', 'depth', 'heels'] as const satisfies readonly ('none' | PreSnap['kind'])[];

/** How far back a man can be told to stand, in yards. */
const NEAREST = 0.5;
const FARTHEST = 25;

function PreSnapFields({ told, roles, mate, words, disabled, onChange }: Props): ReactElement {
  const { preSnap } = told;
  const put = (next: PreSnap | null, gesture: string | null): void => onChange({ ...told, preSnap: next }, gesture);
  return (
    <>
      <OneOf<(typeof PRE_SNAPS)[number]>
        wide
        label="Before the snap he stands"
        value={preSnap?.kind ?? 'none'}
        items={PRE_SNAPS}
        say={(kind) => PRE_SNAP_LABELS[kind]}
        disabled={disabled}
        onChoose={(kind) => {
          if (kind === 'none') put(null, null);
          else if (kind === 'depth') put({ kind, depth: 2 }, null);
          else if (mate !== null) put({ kind, of: mate }, null);
        }}
      />
      {preSnap?.kind === 'depth' && (
        <NumberField
          label="Off the ball"
          unit="yards"
          value={preSnap.depth}
          min={NEAREST}
          max={FARTHEST}
          step={0.25}
          disabled={disabled}
          onChange={(depth, gesture) => put({ kind: 'depth', depth }, gesture)}
        />
      )}
      {preSnap?.kind === 'heels' && (
        <WhoPicker
          label="Whose heels"
          who={preSnap.of}
          roles={roles}
          words={words}
          disabled={disabled}
          onChange={(of) => put({ kind: 'heels', of }, null)}
        />
      )}
    </>
  );
}
