import { because, datum, fact } from '../because.ts';
import type { SideStep } from '../types/index.ts';
import type { Severity } from '../vocabulary.ts';
import { checkOfTelling } from './defineCheck.ts';

type Together = 'together' | 'apart';

/**
 * Both pressures choose their own side, and here they do not go as their rules mean them to: rules that begin alike go apart, or
 * rules that begin opposite go together, because a later tie-break decided. Rules that look at different things mean neither;
 * that they go apart here is only worth knowing.
 */
export const sideSplit = checkOfTelling({
  id: 'side.split',
  title: 'The two may not go where you mean them to',
  severity: 'check',
  matters: 'Most looks send the two as you drew them; here a tie-break, or another strength, parts or joins them.',
  source: 'strength words can disagree: "Setting Strength and Getting Lined Up", r/footballstrategy',
  needsSide: true,
  report: ({ setup, first, second, choice }) => {
    if (choice !== null || second === null || setup.second === null || setup.turn !== 'own') return [];
    if (first.side.kind === 'tie' || second.side.kind === 'tie') return [];
    const here: Together = first.side.side === second.side.side ? 'together' : 'apart';
    const meant = meantBy(setup.first.callSide[0], setup.second.callSide[0]);
    if (meant === here || (meant === null && here === 'together')) return [];
    const severity: Severity = meant === null ? 'note' : 'check';
    const sides = {
      one: datum.pressure('first'),
      a: datum.side(first.side.side),
      two: datum.pressure('second'),
      b: datum.side(second.side.side),
    };
    return [
      {
        severity,
        because: because(
          '{one} goes {a} and {two} goes {b}',
          sides,
          WHY[meant ?? 'neither'],
          first.side.because,
          second.side.because,
        ),
      },
    ];
  },
});

const WHY = {
  together: fact('their rules begin alike, so in most looks they go to one side'),
  apart: fact('their rules begin opposite, so in most looks they go to different sides'),
  neither: fact('each goes by its own rule'),
};

/** What two rules mean by their first steps: to go together or apart; null when they look at different things. */
function meantBy(first: SideStep | undefined, second: SideStep | undefined): Together | null {
  if (first === undefined || second === undefined || subject(first) !== subject(second)) return null;
  return way(first) === way(second) ? 'together' : 'apart';
}

function subject(step: SideStep): string {
  switch (step.kind) {
    case 'fixed':
      return 'fixed';
    case 'strength':
      return `strength ${step.by}`;
    case 'role':
      return `role ${step.role}`;
  }
}

function way(step: SideStep): string {
  return step.kind === 'fixed' ? step.side : step.toward;
}
