import type { ReactElement } from 'react';
import type { Report } from '../../report/index.ts';
import { VerdictMark } from '../parts/VerdictMark.tsx';
import { WhyFold } from '../parts/Why.tsx';
import { placedBy } from '../players/placedBy.ts';
import type { BoardModel } from '../session/model.ts';
import { useSession } from '../session/session.ts';
import { FindingList } from './FindingList.tsx';
import { JobTable } from './JobTable.tsx';
import { LinemanTable } from './LinemanTable.tsx';
import { useSettled } from '../parts/useSettled.ts';

/** What the check says of this call in this look. */
export function ReportPanel({ model }: { readonly model: BoardModel }): ReactElement {
  const { store } = useSession();
  const { report, state, analysis } = model;
  const { view } = state;
  return (
    <section className="panel report-panel" aria-labelledby="report-title">
      <h2 id="report-title" className="unseen">
        Report
      </h2>
      <VerdictBanner report={report} />
      <Sides report={report} />
      <h3>The line: what each pressure says</h3>
      <LinemanTable
        rows={report.linemen}
        first={analysis.setup.first.name}
        second={analysis.setup.second?.name ?? null}
      />
      <h3>Findings</h3>
      <FindingList rows={report.findings} lit={view.lit} onLight={(lit) => store.setView({ lit })} />
      <h3>All eleven</h3>
      <JobTable
        rows={report.jobs}
        placedBy={(role) => placedBy(analysis, role)}
        selected={view.selected?.kind === 'defender' ? view.selected.role : null}
        onSelect={(role) => store.setView({ selected: { kind: 'defender', role } })}
      />
      <details className="checked">
        <summary>What was checked ({report.checked.length})</summary>
        <ul>
          {report.checked.map((check) => (
            <li key={check}>{check}</li>
          ))}
        </ul>
      </details>
    </section>
  );
}

function VerdictBanner({ report }: { readonly report: Report }): ReactElement {
  const counts = countText(report);
  const spoken = useSettled(`${report.verdictText}. ${counts}`);
  return (
    <div className={`verdict-banner verdict-${report.verdict}`}>
      <VerdictMark verdict={report.verdict} size={30} />
      <p>
        <strong>{report.verdictText}</strong> <span>{counts}</span>
      </p>
      {/* While a man is dragged the words above change with every frame; this one only speaks when they have settled. */}
      <p className="unseen" role="status">
        {spoken}
      </p>
    </div>
  );
}

function countText({ findings }: Report): string {
  if (findings.length === 0) return 'no findings in this look';
  const words = (['stop', 'check', 'note'] as const).flatMap((severity) => {
    const count = findings.filter((finding) => finding.severity === severity).length;
    return count === 0 ? [] : [`${count} ${severity}`];
  });
  return `${words.join(', ')} in this look`;
}

function Sides({ report }: { readonly report: Report }): ReactElement {
  return (
    <ul className="sides">
      {report.sides.map((side, index) => (
        <li key={index}>
          <span className="pressure-name">{side.pressure}</span> {side.text}
          <WhyFold of={`this side, ${side.pressure}`} reasons={[side.why]} />
        </li>
      ))}
    </ul>
  );
}
