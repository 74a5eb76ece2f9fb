import type { ManRow } from '../../editor/index.ts';
import type { OffencePlayer } from '../../engine/index.ts';
import { sameMan, standings } from '../../store/index.ts';
import type { BoardModel } from '../session/model.ts';

/** The 22 in words: the defence as in the job table, then the offence, its line first. */
export function manRows({ report, lexicon, analysis }: BoardModel): readonly ManRow[] {
  const men = standings(analysis);
  const whereIs = (man: ManRow['man']): ManRow['at'] => {
    const standing = men.find((candidate) => sameMan(candidate.man, man));
    if (standing === undefined) throw new Error('A man of the report does not stand on the field');
    return standing.at;
  };
  const defence = report.jobs.map((row): ManRow => {
    const man = { kind: 'defender', role: row.role } as const;
    const words = `Defence, ${row.letter}, ${row.name}, ${row.aligns}. ${row.job}`;
    return { man, letter: row.letter, words, at: whereIs(man) };
  });
  const onLine = new Set(analysis.facts.onLine);
  const offence = [...analysis.facts.players.values()].sort(
    (a, b) => Number(onLine.has(b.id)) - Number(onLine.has(a.id)) || a.x - b.x,
  );
  const moving = analysis.setup.look.motion?.player;
  return [
    ...defence,
    ...offence.map((player) => {
      const name = lexicon.player(player.id);
      return offenceRow(player, onLine.has(player.id), player.id === moving ? `${name}, in motion, at the snap` : name);
    }),
  ];
}

function offenceRow(player: OffencePlayer, onLine: boolean, name: string): ManRow {
  const across = player.x === 0 ? 'over the ball' : `${yards(Math.abs(player.x))} ${player.x < 0 ? 'left' : 'right'}`;
  const depth = onLine ? 'on the line' : `${yards(-player.y)} deep`;
  return {
    man: { kind: 'offence', player: player.id },
    letter: player.letter,
    words: `Offence, ${name}, ${across}, ${depth}`,
    at: { x: player.x, y: player.y },
  };
}

function yards(value: number): string {
  const rounded = Math.round(value * 100) / 100;
  return rounded === 1 ? '1 yard' : `${rounded} yards`;
}
