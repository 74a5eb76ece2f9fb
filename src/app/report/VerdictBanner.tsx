import type { ReactElement } from 'react';
import type { Report } from '../../report/index.ts';
import { useSettled } from '../parts/useSettled.ts';
import { VerdictMark } from '../parts/VerdictMark.tsx';

interface Props {
  readonly report: Report;
  /** What the last change did to the findings; "" for nothing. */
  readonly changed: string;
  /** A man is in hand: nothing is said until he is let go. */
  readonly held: boolean;
}

/** The verdict of the call in this look, and how many findings made it. */
export function VerdictBanner({ report, changed, held }: Props): ReactElement {
  const { counts } = report;
  const spoken = useSettled([report.verdictText, counts, changed].filter((words) => words !== '').join('. '), held);
  return (
    <div className={`verdict-banner verdict-${report.verdict}`}>
      <VerdictMark verdict={report.verdict} size={30} />
      <p>
        <strong>{report.verdictText}</strong> <span className="counts">{counts}</span>
      </p>
      {/* While a man is dragged the words above change with every frame; this one only speaks when he is let go. */}
      <p className="unseen" role="status">
        {spoken}
      </p>
    </div>
  );
}
