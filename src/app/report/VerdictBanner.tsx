import type { ReactElement } from 'react';
import type { Report } from '../../report/index.ts';
import { useSettled } from '../parts/useSettled.ts';
import { VerdictMark } from '../parts/VerdictMark.tsx';

/** The verdict of the call in this look, and how many findings made it. */
export function VerdictBanner({ report }: { readonly report: Report }): ReactElement {
  const { counts } = report;
  const spoken = useSettled(`${report.verdictText}. ${counts}`);
  return (
    <div className={`verdict-banner verdict-${report.verdict}`}>
      <VerdictMark verdict={report.verdict} size={30} />
      <p>
        <strong>{report.verdictText}</strong> <span className="counts">{counts}</span>
      </p>
      {/* While a man is dragged the words above change with every frame; this one only speaks when they have settled. */}
      <p className="unseen" role="status">
        {spoken}
      </p>
    </div>
  );
}
