import { refused, type Result } from '../base/index.ts';
import { toSetup, type Playbook } from '../document/index.ts';
import { asCallId, type Call, type LookId, type Setup } from '../engine/index.ts';
import { partsOf } from './board.ts';
import type { Board } from './types.ts';

/** Why there is nothing to analyse: the playbook lacks something. */
export interface NothingToShow {
  readonly missing: 'look' | 'front' | 'pressure' | 'coverage';
}

/** What the engine is asked: the board's call against that look. A kept call brings what the coach lives with in it. */
export function setupOf(playbook: Playbook, board: Board, look: LookId): Result<Setup, NothingToShow> {
  const { front, first, spot } = board;
  if (front === null) return refused({ missing: 'front' });
  if (first === null) return refused({ missing: 'pressure' });
  const kept = playbook.calls.find(({ id }) => id === board.call);
  const call: Call = {
    ...partsOf(board),
    front,
    first,
    id: kept?.id ?? ON_BOARD,
    name: kept?.name ?? '',
    waivers: kept?.waivers ?? NONE,
    tags: kept?.tags ?? NO_TAGS,
    installDay: kept?.installDay ?? null,
  };
  const setup = toSetup(playbook, { call, look, spot });
  return setup.ok ? setup : refused({ missing: 'coverage' });
}

/** What is on the board need not be a kept call. The blank keeps it apart from every id a file may hold. */
const ON_BOARD = asCallId('on board');

const NONE: Call['waivers'] = [];
const NO_TAGS: Call['tags'] = [];
