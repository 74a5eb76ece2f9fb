import type { ReactElement } from 'react';
import type { Report } from '../../report/index.ts';
import { WhyFold } from '../parts/Why.tsx';
import { placedBy } from '../players/placedBy.ts';
import type { BoardModel } from '../session/model.ts';
import { useSession } from '../session/session.ts';
import { CannotTellSection } from './CannotTell.tsx';
import { CheckOutSection, ChoiceSection, MotionSection } from './CallNotes.tsx';
import { CoverageSection } from './Coverage.tsx';
import { Findings } from './Findings.tsx';
import { changesText } from './followed.ts';
import { JobTable } from './JobTable.tsx';
import { LinemanTable } from './LinemanTable.tsx';
import { ProtectionsSection, RunsSection } from './Plays.tsx';
import { Section } from './Section.tsx';
import { useChanges } from './useChanges.ts';
import { VerdictBanner } from './VerdictBanner.tsx';
import { WaivedSection } from './Waived.tsx';

/** What the check says of this call in this look: the verdict, what made it, the line, and folded below all the rest. */
export function ReportPanel({ model }: { readonly model: BoardModel }): ReactElement {
  const { report, analysis } = model;
  const changes = useChanges(model);
  return (
    <section className="panel report-panel" aria-labelledby="report-title">
      <h2 id="report-title" className="unseen">
        Report
      </h2>
      <VerdictBanner report={report} changed={changesText(changes)} held={model.state.preview !== null} />
      <Findings model={model} changes={changes} />
      <section aria-labelledby="line-title">
        <h3 id="line-title">The line: what each pressure says</h3>
        <Sides report={report} />
        <LinemanTable
          rows={report.linemen}
          first={analysis.setup.first.name}
          second={analysis.setup.second?.name ?? null}
        />
      </section>
      <div className="sections">
        {report.choice !== null && <ChoiceSection note={report.choice} />}
        {report.checkOut !== null && <CheckOutSection note={report.checkOut} />}
        {report.motion !== null && <MotionSection note={report.motion} />}
        <AllEleven model={model} />
        <CoverageSection coverage={report.coverage} />
        <RunsSection model={model} />
        <ProtectionsSection model={model} />
        <WaivedSection model={model} />
        <CannotTellSection rows={report.cannotTell} />
        <Section title="What was looked for" count={report.checked.length}>
          <ul className="plain-rows">
            {report.checked.map((check) => (
              <li key={check}>{check}</li>
            ))}
          </ul>
        </Section>
      </div>
    </section>
  );
}

function AllEleven({ model }: { readonly model: BoardModel }): ReactElement {
  const { store } = useSession();
  const { report, analysis, state } = model;
  const [selected] = state.view.selection;
  return (
    <Section title="All eleven" note="where each lines up, and his job">
      <JobTable
        rows={report.jobs}
        placedBy={(role) => placedBy(analysis, role)}
        selected={selected?.kind === 'defender' ? selected.role : null}
        onSelect={(role) => store.setView({ selection: [{ kind: 'defender', role }] })}
      />
    </Section>
  );
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
