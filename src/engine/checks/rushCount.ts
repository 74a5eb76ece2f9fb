import { because, datum, fact } from '../because.ts';
import { checkOfTelling } from './defineCheck.ts';

/** More or fewer come than the coach says the call has; cannot tell while a man may come or not. */
export const rushCount = checkOfTelling({
  id: 'rush.count',
  title: 'The number of rushers is not what the call says',
  severity: 'check',
  matters: 'The shell behind the rush is counted for the men the call says, not for the men who go.',
  source: 'rush + under + deep + man = 11: arithmetic of "Creepers vs. Simulated Pressures", Coach Hoover, 10 Aug 2019',
  needsSide: true,
  report: ({ setup }, account) => {
    const said = setup.rushers;
    if (said === null) return [];
    const { sure, maybe } = account.rushers;
    if (maybe.length > 0 && sure.length <= said && said <= sure.length + maybe.length) {
      return [
        {
          undetermined: true,
          because: because(
            'whether {n} rush, as the call says, depends on {who}',
            { n: datum.number(said), who: datum.roles(maybe) },
            fact('of the two jobs told one rushes and the other does not'),
          ),
          who: maybe,
        },
      ];
    }
    if (maybe.length === 0 && sure.length === said) return [];
    return [
      {
        because: because('{n} rush and the call says {said}', {
          n: datum.number(account.rush),
          said: datum.number(said),
        }),
        who: sure,
      },
    ];
  },
});
