import { arranged, nudge, type Arrangement } from '../../editor/index.ts';
import type { RoleId } from '../../engine/index.ts';
import {
  clearSomeHands,
  copySpots,
  handToRule,
  includesMan,
  manKey,
  pasteSpots,
  sameMan,
  standings,
  type Man,
  type Standing,
} from '../../store/index.ts';
import { useMoveMen } from '../board/useMoveMen.ts';
import type { BoardModel } from '../session/model.ts';
import { useCommit, useSession } from '../session/session.ts';
import { menName } from './manName.ts';

/** Everything a hand does with the men who are picked, for keys and buttons alike. */
export interface Hand {
  /** Those who are picked and stand on the field, the one picked first in front. */
  readonly picked: readonly Standing[];
  /** Those of them who stand by hand and could go back to their rules. */
  readonly byHand: readonly RoleId[];
  /** One step by that arrow key; false for any other key. Steps with one gesture are one step of the history. */
  readonly nudge: (key: string, big: boolean, gesture: string | null) => boolean;
  readonly arrange: (how: Arrangement) => void;
  readonly backToRule: () => void;
  /** Makes a rule of where the first of them stands who was set by hand. */
  readonly makeRule: () => void;
  readonly copy: () => void;
  readonly paste: () => void;
  /** Picks a whole team, or all who were set by hand. */
  readonly pick: (which: Man['kind'] | 'by-hand') => void;
}

/** What an arrangement is called in the history. */
const VERBS: Readonly<Record<Arrangement, string>> = {
  'same-depth': 'put to one depth',
  'same-width': 'put in one file',
  spread: 'spread evenly',
  mirror: 'mirrored',
};

/** The hand at work on that board. */
export function useHand(model: BoardModel): Hand {
  const { store, notices } = useSession();
  const commit = useCommit();
  const move = useMoveMen(model);
  const { analysis, state, lexicon } = model;
  const { selection, turned, clip } = state.view;
  const { look, front } = analysis.setup;
  const men = standings(analysis);
  const picked = selection.flatMap((man) => men.find((each) => sameMan(each.man, man)) ?? []);
  const handed = front.byHand.filter((hand) => hand.look === look.id).map(({ role }) => role);
  const byHand = handed.filter((role) => includesMan(selection, { kind: 'defender', role }));
  return {
    picked,
    byHand,
    nudge: (key, big, gesture) => {
      const moves = picked.flatMap(({ man, at }): readonly Standing[] => {
        const to = nudge(at, key, big, turned);
        return to === null ? [] : [{ man, at: to }];
      });
      if (moves.length === 0) return false;
      move(moves, gesture === null ? null : `${gesture} ${selection.map(manKey).join()}`);
      return true;
    },
    arrange: (how) => {
      move(arranged(picked, how), null, VERBS[how]);
    },
    backToRule: () => {
      if (byHand.length === 0) {
        notices.say('Nobody who is picked was set by hand');
        return;
      }
      const roles = byHand.map((role): Man => ({ kind: 'defender', role }));
      commit({
        label: `gave ${menName(roles, lexicon)} back to ${roles.length === 1 ? 'his rule' : 'their rules'}`,
        look: look.id,
        gesture: null,
        // The front they stand in, which need not be the one called: the call may be checked out of here.
        change: (now) => clearSomeHands(now, { front: front.id, look: look.id, roles: byHand }),
      });
    },
    makeRule: () => {
      const [role] = byHand;
      if (role === undefined) return;
      commit({
        label: `made a rule of where ${menName([{ kind: 'defender', role }], lexicon)} stands`,
        look: look.id,
        gesture: null,
        change: (now) => handToRule(now, { front: front.id, look: look.id, role, spot: analysis.setup.spot }),
      });
    },
    copy: () => {
      if (picked.length === 0) return;
      store.setView({ clip: copySpots(look, picked) });
      notices.say(`Copied the spots of ${menName(selection, lexicon)}: go to another look and put them there`);
    },
    paste: () => {
      if (clip.length === 0) return;
      const moves = pasteSpots(
        clip,
        look,
        front.roles.map(({ role }) => role),
      );
      if (moves.length === 0) notices.say('Not done: none of the men whose spots were copied is in this look');
      else if (move(moves, null, 'put the copied spots on')) store.setView({ selection: moves.map(({ man }) => man) });
    },
    pick: (which) =>
      store.setView({
        selection:
          which === 'by-hand'
            ? handed.map((role): Man => ({ kind: 'defender', role }))
            : men.map(({ man }) => man).filter(({ kind }) => kind === which),
      }),
  };
}
