import type { ReactElement } from 'react';
import type { CoverageSection as Coverage } from '../../report/index.ts';
import { WhyFold } from '../parts/Why.tsx';
import { useSession } from '../session/session.ts';
import { lightProps } from './lighting.ts';
import { Section } from './Section.tsx';

/** The pass half of the call: how many do what, who drops where, who has whom. */
export function CoverageSection({ coverage }: { readonly coverage: Coverage }): ReactElement {
  const { store } = useSession();
  const light = (key: string, about: Parameters<typeof lightProps>[1]) =>
    lightProps(key, about, (lit) => store.setView({ lit }));
  return (
    <Section title="Coverage" note={coverage.open ? coverage.headline : coverage.count} open={coverage.open}>
      <p>
        <strong>{coverage.shell}</strong>: {coverage.count}. {coverage.headline}.
      </p>
      <table className="cover-table">
        <caption>Who has whom</caption>
        <tbody>
          {coverage.receivers.map((row) => (
            <tr key={row.receiver} className={row.open ? 'is-open' : undefined} {...light(row.receiver, row)}>
              <th scope="row">{row.receiver}</th>
              <td>
                <strong>{row.by}</strong>
                {row.how !== '' && `, ${row.how}`}
                <WhyFold of={`for ${row.receiver}`} reasons={[row.why]} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {coverage.zones.length > 0 && (
        <table className="cover-table">
          <caption>Who drops where</caption>
          <tbody>
            {coverage.zones.map((row, index) => (
              // Two men may drop to one zone.
              <tr key={index} className={row.open ? 'is-open' : undefined} {...light(`zone ${index}`, row)}>
                <th scope="row">{row.zone}</th>
                <td>
                  <strong>{row.by}</strong>
                  {row.how === 'filled in' && ', filled in: nobody is told to'}
                  <WhyFold of={`for the ${row.zone}`} reasons={[row.why]} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </Section>
  );
}
