import type { Playbook } from '../../document/index.ts';
import type { MenuCase } from '../../menu/index.ts';
import type { Board } from '../../store/index.ts';

/** What the board has to show to stand in a case. */
export function standIn({ call, look, spot }: MenuCase, { calls }: Playbook): Board {
  const { front, first, second, turn, combination, coverage, rushers } = call;
  const kept = calls.some(({ id }) => id === call.id);
  return {
    front,
    first,
    second,
    turn,
    combination,
    coverage,
    rushers,
    look: look.id,
    spot,
    call: kept ? call.id : null,
  };
}
