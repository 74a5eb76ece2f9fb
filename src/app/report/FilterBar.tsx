import type { ReactElement } from 'react';
import { SEVERITIES, type Role, type Severity } from '../../engine/index.ts';
import { ROOM_WORDS, type FindingRow } from '../../report/index.ts';
import { useSettled } from '../parts/useSettled.ts';
import { VERDICT_NAMES, VerdictMark } from '../parts/VerdictMark.tsx';
import { KINDS, kindsOf, type FindingFilter, type Kind } from './findingFilter.ts';

interface Props {
  readonly findings: readonly FindingRow[];
  /** How many of them the filter lets through. */
  readonly shown: number;
  readonly roles: readonly Role[];
  readonly filter: FindingFilter;
  readonly fresh: ReadonlySet<string>;
  readonly onFilter: (filter: FindingFilter) => void;
}

const KIND_WORDS: Readonly<Record<Kind, string>> = { ...ROOM_WORDS, offence: 'Offence' };

/** What of the findings is shown: by how grave they are, whom they are about, and what is new. What is hidden still counts. */
export function FilterBar({ findings, shown, roles, filter, fresh, onFilter }: Props): ReactElement {
  const { hidden, kind, onlyNew } = filter;
  const severities = new Set(findings.map(({ severity }) => severity));
  const kinds = KINDS.filter((each) => each === kind || findings.some((row) => kindsOf(row, roles).includes(each)));
  const toggle = (severity: Severity): void => {
    const next = hidden.includes(severity) ? hidden.filter((each) => each !== severity) : [...hidden, severity];
    onFilter({ ...filter, hidden: next });
  };
  // One finding alone needs no switch, unless one is switched.
  const needed = findings.length > 1 || shown < findings.length || kind !== null || onlyNew;
  return (
    <>
      {needed && (
        <div className="finding-filter" role="group" aria-label="Findings to show">
          {(severities.size > 1 || hidden.length > 0) &&
            SEVERITIES.map((severity) => {
              const count = findings.filter((row) => row.severity === severity).length;
              if (count === 0) return null;
              return (
                <label key={severity} className="severity-switch">
                  <input type="checkbox" checked={!hidden.includes(severity)} onChange={() => toggle(severity)} />
                  <VerdictMark verdict={severity} size={15} /> {VERDICT_NAMES[severity]} {count}
                </label>
              );
            })}
          {(fresh.size > 0 || onlyNew) && (
            <label className="severity-switch">
              <input
                type="checkbox"
                checked={onlyNew}
                onChange={(event) => onFilter({ ...filter, onlyNew: event.target.checked })}
              />
              Only what is new
            </label>
          )}
          {(kinds.length > 1 || kind !== null) && (
            <label className="kind-choice">
              About{' '}
              <select
                value={kind ?? ''}
                onChange={(event) =>
                  onFilter({ ...filter, kind: KINDS.find((each) => each === event.target.value) ?? null })
                }
              >
                <option value="">everybody</option>
                {kinds.map((each) => (
                  <option key={each} value={each}>
                    {KIND_WORDS[each]}
                  </option>
                ))}
              </select>
            </label>
          )}
        </div>
      )}
      <ShownCount shown={shown} all={findings.length} />
    </>
  );
}

function ShownCount({ shown, all }: { readonly shown: number; readonly all: number }): ReactElement {
  const words = shown === all ? '' : `${shown} of ${all} findings shown`;
  const spoken = useSettled(words);
  return (
    <>
      {words !== '' && <p className="hint">{words}</p>}
      <p className="unseen" role="status">
        {spoken}
      </p>
    </>
  );
}
