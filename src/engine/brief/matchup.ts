import { createNumbering, remembered } from '../../base/index.ts';
import { align } from '../align/align.ts';
import type { Account } from '../checks/account.ts';
import { readLook } from '../facts/readLook.ts';
import { gapKey } from '../gaps.ts';
import type { Ground } from '../play.ts';
import { ownSide, resolvePressure } from '../resolve/resolvePressure.ts';
import { baseOf, inOrder } from '../tell.ts';
import type { Choice, Coverage, Front, Look, Pressure, Role, SideDecision } from '../types/index.ts';
import type { Place, RuleLevel, Side } from '../vocabulary.ts';
import { columnOf, numberingJobs, tellingText, type Heard, type Known } from './column.ts';
import type { Said, Spoken } from './types.ts';

/** A play that has been judged. */
export interface JudgedPlay {
  readonly said: Said;
  readonly account: Account;
}

/** So many plays are kept of one shell in a matchup at most; then it begins again. */
const MOST_PLAYS = 4_000;

/**
 * A front against a look at one ball spot, with everything that calls out of it share. Men are told few different things there,
 * and play fewer; both get numbers by what they say, their words apart, so that what is known is found again at once.
 */
export interface Matchup {
  readonly ground: Ground;
  /** Which side a pressure picks for itself. */
  readonly sideOf: (pressure: Pressure) => SideDecision;
  /** What a pressure tells, with a shell behind it or none, to the side that was picked. */
  readonly hear: (pressure: Pressure, coverage: Coverage | null, side: SideDecision) => Heard;
  /** The eleven, in the order in which the front stands, with what the pressures tell them. */
  readonly menOf: (first: Heard, second: Heard | null, ran: Choice['ran'] | null) => readonly Known[];
  /** The play of that name with that shell behind it, judged once. */
  readonly playOf: (coverage: Coverage, name: string, judge: () => JudgedPlay) => JudgedPlay;
}

/** The matchup of a front against a look; the same one whenever it is asked again with the very same objects. */
export const matchupOf = remembered(
  (look: Look, front: Front, roles: readonly Role[], level: RuleLevel, spot: Place): Matchup => {
    const facts = readLook(look, level, spot);
    const atRule = align(front, roles, facts, look.id);
    const tellings = createNumbering(tellingText);
    // Told nothing is asked first, so it is 0: the number where there is no second pressure.
    tellings.numberOf(undefined);
    const jobNumber = numberingJobs();
    const spoken = createNumbering(spokenText);
    const accounts = createNumbering(accountText);
    const heard = new WeakMap<Pressure, readonly (Heard & { readonly key: HeardKey })[]>();
    const playsWith = remembered((_coverage: Coverage): Map<string, JudgedPlay> => new Map());
    // In the order in which they stand: whoever is moved before the snap only goes nearer to the line or away from it.
    const eleven = [...atRule.values()].toSorted((a, b) => inOrder({ aligned: a }, { aligned: b }));
    const columns = eleven.map((man) => columnOf(man, baseOf(front, man.role.id), facts, jobNumber));

    const listen = (pressure: Pressure, coverage: Coverage | null, side: SideDecision): Heard => {
      const resolved = resolvePressure(pressure, coverage, side, facts, atRule);
      return { resolved, tellings: eleven.map(({ role }) => tellings.numberOf(resolved.tellings.get(role.id))) };
    };
    /** Of equal things the first: thousands of plays say few different ones. */
    const keep = ({ said, account }: JudgedPlay): JudgedPlay => ({
      said: { ...said, found: said.found.map((each) => spoken.things[spoken.numberOf(each)] ?? each) },
      account: accounts.things[accounts.numberOf(account)] ?? account,
    });

    return {
      ground: { setup: { level, spot, roles, front, look }, facts },
      sideOf: (pressure) => ownSide(pressure, facts, atRule),
      hear: (pressure, coverage, decision) => {
        const side = decision.kind === 'decided' ? decision.side : null;
        const all = heard.get(pressure) ?? [];
        const same = all.find(({ key }) => key.coverage === coverage && key.side === side);
        if (same !== undefined) return same;
        const made = { ...listen(pressure, coverage, decision), key: { coverage, side } };
        heard.set(pressure, [...all, made]);
        return made;
      },
      menOf: (first, second, ran) => columns.map((column, at) => column(at, first, second, ran)),
      playOf: (coverage, name, judge) => {
        const plays = playsWith(coverage);
        let play = plays.get(name);
        if (play === undefined) {
          if (plays.size >= MOST_PLAYS) plays.clear();
          plays.set(name, (play = keep(judge())));
        }
        return play;
      },
    };
  },
);

interface HeardKey {
  readonly coverage: Coverage | null;
  readonly side: Side | null;
}

function spokenText({ rule, severity, who, gaps, players }: Spoken): string {
  return `${rule} ${severity} ${who.join()} ${gaps.map(gapKey).join()} ${players.join()}`;
}

function accountText({ emptyZones, openReceivers, turnedBack, rushers, rush }: Account): string {
  const zones = emptyZones.map(({ zone, side }) => `${zone} ${side}`).join();
  const who = `${rushers.sure.join()} ${rushers.maybe.join()} ${rush}`;
  return `${zones} ${openReceivers.join()} ${turnedBack.left} ${turnedBack.right} ${who}`;
}
