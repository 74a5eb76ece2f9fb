import { useRef, useState, type ReactElement } from 'react';
import { evidenceOf, SEVERITIES, type Severity } from '../../engine/index.ts';
import type { FindingRow } from '../../report/index.ts';
import { VERDICT_NAMES, VerdictMark } from '../parts/VerdictMark.tsx';
import type { BoardModel } from '../session/model.ts';
import { useSuggestions } from '../suggest/useSuggestions.ts';
import { FilterBar } from './FilterBar.tsx';
import { FindingCard } from './FindingCard.tsx';
import { EVERYTHING, filtered } from './findingFilter.ts';
import { changesText, type Changes } from './followed.ts';
import { WaiveDialog } from './WaiveDialog.tsx';

interface Props {
  readonly model: BoardModel;
  readonly changes: Changes;
}

/** What is wrong, the gravest first, as far as the coach wants to see it. */
export function Findings({ model, changes }: Props): ReactElement {
  const { findings } = model.report;
  const [filter, setFilter] = useState(EVERYTHING);
  const [waiving, setWaiving] = useState<FindingRow | null>(null);
  const suggestions = useSuggestions(model);
  const heading = useRef<HTMLHeadingElement>(null);
  const { roles } = model.analysis.setup;
  const shown = filtered(findings, filter, roles, changes.fresh);
  const changed = changesText(changes);
  const cardOf = (row: FindingRow): ReactElement => (
    <FindingCard
      key={row.key}
      row={row}
      model={model}
      isNew={changes.fresh.has(row.key)}
      suggestions={suggestions.get(placeOf(row, model))}
      onWaive={() => setWaiving(row)}
      onApplied={() => heading.current?.focus()}
    />
  );
  return (
    <section className="findings" aria-labelledby="findings-title">
      <div className="findings-head">
        {/* The focus comes here when the finding it was in is gone. */}
        <h3 id="findings-title" ref={heading} tabIndex={-1}>
          Findings
        </h3>
        {changed !== '' && <p className="hint">{changed}</p>}
      </div>
      <FilterBar
        findings={findings}
        shown={shown.length}
        roles={roles}
        filter={filter}
        fresh={changes.fresh}
        onFilter={setFilter}
      />
      {findings.length === 0 && <p className="quiet">{nothingText(model)}</p>}
      {SEVERITIES.map((severity) => {
        const rows = shown.filter((row) => row.severity === severity);
        return rows.length === 0 ? null : (
          <Group key={severity} severity={severity} count={rows.length}>
            {rows.map(cardOf)}
          </Group>
        );
      })}
      {waiving !== null && <WaiveDialog model={model} row={waiving} onClose={() => setWaiving(null)} />}
    </section>
  );
}

interface GroupProps {
  readonly severity: Severity;
  readonly count: number;
  readonly children: readonly ReactElement[];
}

/** The findings of one gravity under a heading of their own. */
function Group({ severity, count, children }: GroupProps): ReactElement {
  return (
    <>
      <h4 className="finding-group">
        <VerdictMark verdict={severity} size={15} /> {GROUP_WORDS[severity]}
        <span className="section-count">{count}</span>
      </h4>
      <ul className="finding-list" aria-label={`${VERDICT_NAMES[severity]}: ${count}`}>
        {children}
      </ul>
    </>
  );
}

const GROUP_WORDS: Readonly<Record<Severity, string>> = {
  stop: 'Stops the call',
  check: 'For you to decide',
  note: 'Good to know',
};

/** Where the engine told a finding, by what it is about. */
function placeOf(row: FindingRow, { analysis }: BoardModel): number {
  const evidence = evidenceOf(row);
  return analysis.findings.findIndex((each) => each.rule === row.rule && evidenceOf(each) === evidence);
}

function nothingText({ report }: BoardModel): string {
  if (report.verdict === 'left-out') return 'The call is not run against this look, so it is not judged.';
  return report.waived.length > 0 ? 'Nothing but what you live with.' : 'Nothing found in this look.';
}
