import type { Analysis, Answer, FilledZone, PassCount, RoleId } from '../engine/index.ts';
import { fill } from './fill.ts';
import type { CoverageSection, ReceiverRow, ZoneRow } from './types.ts';
import type { Lexicon } from './words/lexicon.ts';
import { capitalised, listed } from './words/lists.ts';
import { zoneName } from './words/names.ts';

const NOBODY = 'nobody';

/** The pass half of the call in words. */
export function coverageSection(analysis: Analysis, lexicon: Lexicon): CoverageSection {
  const { setup, choice, passCount } = analysis;
  const zones = [...analysis.zones.map((zone) => zoneRow(zone, lexicon)), ...otherDrops(analysis, lexicon)];
  const receivers = analysis.answers.map((answer) => receiverRow(answer, analysis, lexicon));
  const shell = choice?.ran === 'second' && setup.secondCoverage !== null ? setup.secondCoverage : setup.coverage;
  return {
    shell: shell.name,
    count: passCountText(passCount),
    headline: headline(zones, receivers),
    open: zones.some((row) => row.open) || receivers.some((row) => row.open),
    zones,
    receivers,
  };
}

/** "5 rush, 3 under, 3 deep": what there is none of is not said. */
export function passCountText({ rush, under, deep, man, free }: PassCount): string {
  const parts: readonly (readonly [number, string])[] = [
    [rush, 'rush'],
    [under, 'under'],
    [deep, 'deep'],
    [man, 'man'],
    [free, 'free'],
  ];
  return parts.flatMap(([count, word]) => (count === 0 ? [] : [`${String(count)} ${word}`])).join(', ');
}

function headline(zones: readonly ZoneRow[], receivers: readonly ReceiverRow[]): string {
  const open = receivers.filter((row) => row.open).map((row) => row.receiver);
  const empty = zones.filter((row) => row.open).map((row) => `the ${row.zone}`);
  const parts = [
    ...(open.length === 0 ? [] : [`nobody has ${listed(open, '')}`]),
    ...(empty.length === 0 ? [] : [`nobody drops to ${listed(empty, '')}`]),
  ];
  return parts.length === 0 ? 'Every receiver has somebody' : capitalised(parts.join('; '));
}

function zoneRow({ zone, side, by, how, because }: FilledZone, lexicon: Lexicon): ZoneRow {
  return {
    zone: zoneName(zone, side),
    by: by === null ? NOBODY : lexicon.role(by),
    how: how === 'filled' ? 'filled in' : how,
    open: by === null,
    why: fill(because, lexicon),
    ...about(by),
  };
}

/** Men who drop to a zone the shell does not list as needed: told to it all the same. */
function otherDrops({ zones, assignments }: Analysis, lexicon: Lexicon): readonly ZoneRow[] {
  const listedMen = new Set(zones.map((zone) => zone.by));
  return assignments.flatMap(({ combined, pass }): readonly ZoneRow[] => {
    const { id } = combined.role;
    if (pass.kind !== 'zone' || listedMen.has(id)) return [];
    return [
      {
        zone: zoneName(pass.zone, pass.side),
        by: lexicon.role(id),
        how: 'told',
        open: false,
        why: fill(combined.because, lexicon),
        ...about(id),
      },
    ];
  });
}

function receiverRow(answer: Answer, analysis: Analysis, lexicon: Lexicon): ReceiverRow {
  const { player, as, by } = answer;
  const receiver =
    as.kind === 'back'
      ? lexicon.player(player)
      : `number ${String(as.number)} ${as.side} ${lexicon.playerLetter(player)}`;
  const who = by === null ? NOBODY : lexicon.role(by);
  const how = howText(answer, analysis);
  return {
    receiver,
    by: who,
    how,
    text: `${capitalised(receiver)}: ${who}${how === null ? '' : `, ${how}`}`,
    open: by === null,
    why: fill(answer.because, lexicon),
    ...about(by),
    players: [player],
  };
}

/** How he answers him. The side of his zone is said where it is not the receiver's. */
function howText({ how, by, as }: Answer, { assignments }: Analysis): string | null {
  switch (how) {
    case null:
      return null;
    case 'man':
      return 'man to man';
    case 'peel':
      return 'leaves his rush with him';
    case 'zone': {
      const pass = assignments.find(({ aligned }) => aligned.role.id === by)?.pass;
      if (pass?.kind !== 'zone') throw new Error('A receiver is answered out of a zone nobody drops to');
      const mine = as.kind === 'number' && pass.side === as.side;
      const name = zoneName(pass.zone, pass.side);
      return `out of the ${mine ? name.slice(0, name.lastIndexOf(' ')) : name}`;
    }
  }
}

function about(by: RoleId | null): Pick<ZoneRow, 'who' | 'players' | 'gaps'> {
  return { who: by === null ? [] : [by], players: [], gaps: [] };
}
