import { useRef, useState, type ReactElement } from 'react';
import { evidenceOf, SEVERITIES, type Severity } from '../../engine/index.ts';
import type { FindingRow } from '../../report/index.ts';
import { useSettled } from '../parts/useSettled.ts';
import { VERDICT_NAMES, VerdictMark } from '../parts/VerdictMark.tsx';
import type { BoardModel } from '../session/model.ts';
import { useSuggestions } from '../suggest/useSuggestions.ts';
import { FindingCard } from './FindingCard.tsx';
import { WaiveDialog } from './WaiveDialog.tsx';

/** What is wrong, the gravest first, as far as the coach wants to see it. */
export function Findings({ model }: { readonly model: BoardModel }): ReactElement {
  const { findings } = model.report;
  const [hidden, setHidden] = useState<readonly Severity[]>([]);
  const [waiving, setWaiving] = useState<FindingRow | null>(null);
  const suggestions = useSuggestions(model);
  const heading = useRef<HTMLHeadingElement>(null);
  const shown = findings.filter(({ severity }) => !hidden.includes(severity));
  const severities = new Set(findings.map(({ severity }) => severity));
  const toggle = (severity: Severity): void => {
    setHidden(hidden.includes(severity) ? hidden.filter((each) => each !== severity) : [...hidden, severity]);
  };
  return (
    <section className="findings" aria-labelledby="findings-title">
      <div className="findings-head">
        {/* The focus comes here when the finding it was in is gone. */}
        <h3 id="findings-title" ref={heading} tabIndex={-1}>
          Findings
        </h3>
        {/* One kind alone needs no switch, unless it is switched off. */}
        {(severities.size > 1 || shown.length < findings.length) && (
          <Filter findings={findings} hidden={hidden} onToggle={toggle} />
        )}
      </div>
      <ShownCount shown={shown.length} all={findings.length} />
      {findings.length === 0 && <p className="quiet">{nothingText(model)}</p>}
      <ul className="finding-list">
        {shown.map((row) => (
          <FindingCard
            key={row.key}
            row={row}
            model={model}
            suggestions={suggestions.get(placeOf(row, model))}
            onWaive={() => setWaiving(row)}
            onApplied={() => heading.current?.focus()}
          />
        ))}
      </ul>
      {waiving !== null && <WaiveDialog model={model} row={waiving} onClose={() => setWaiving(null)} />}
    </section>
  );
}

/** Where the engine told a finding, by what it is about. */
function placeOf(row: FindingRow, { analysis }: BoardModel): number {
  const evidence = evidenceOf(row);
  return analysis.findings.findIndex((each) => each.rule === row.rule && evidenceOf(each) === evidence);
}

function nothingText({ report }: BoardModel): string {
  if (report.verdict === 'left-out') return 'The call is not run against this look, so it is not judged.';
  return report.waived.length > 0 ? 'Nothing but what you live with.' : 'Nothing found in this look.';
}

interface FilterProps {
  readonly findings: readonly FindingRow[];
  readonly hidden: readonly Severity[];
  readonly onToggle: (severity: Severity) => void;
}

/** One switch for each severity there is something of. What is hidden still counts, above and in the strip. */
function Filter({ findings, hidden, onToggle }: FilterProps): ReactElement {
  return (
    <div className="severity-filter" role="group" aria-label="Findings by how grave they are">
      {SEVERITIES.map((severity) => {
        const count = findings.filter((row) => row.severity === severity).length;
        if (count === 0) return null;
        return (
          <label key={severity} className="severity-switch">
            <input type="checkbox" checked={!hidden.includes(severity)} onChange={() => onToggle(severity)} />
            <VerdictMark verdict={severity} size={15} /> {VERDICT_NAMES[severity]} {count}
          </label>
        );
      })}
    </div>
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
