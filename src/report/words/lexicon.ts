import { assertNever } from '../../base/index.ts';
import type {
  Aligned,
  Datum,
  Gap,
  Job,
  LookFacts,
  LookNames,
  PassColumn,
  PlayerId,
  RoleId,
  RunColumn,
  Setup,
} from '../../engine/index.ts';
import { passCell, runCell } from './cells.ts';
import { defenderWords } from './defenders.ts';
import { jobMove, jobSentence, type NameWords } from './jobSentence.ts';
import { listed, numberText } from './lists.ts';
import { gapName, zoneName } from './names.ts';
import { playerWords, type PlayerWords } from './offence.ts';
import { makeRuleWords, type RuleWords } from './rules.ts';
import type { StaffWords } from './staffWords.ts';
import { alignmentText } from './technique.ts';

/** Every word the report, the board and the sheets use for one setup. An id it does not know is a broken promise: it throws. */
export interface Lexicon {
  /** "N". */
  readonly letter: (role: RoleId) => string;
  /** "nose". */
  readonly roleName: (role: RoleId) => string;
  /** In a sentence: "N"; "E (left end)" when two roles share the letter. */
  readonly role: (role: RoleId) => string;
  readonly roles: (roles: readonly RoleId[]) => string;
  /** "A gap left", the defence's left. */
  readonly gap: (gap: Gap) => string;
  readonly gaps: (gaps: readonly Gap[]) => string;
  /** "Y"; "G left" when two men share the letter. */
  readonly playerLetter: (player: PlayerId) => string;
  /** "the tight end Y". */
  readonly player: (player: PlayerId) => string;
  readonly players: (players: readonly PlayerId[]) => string;
  /** The name of the first or second pressure; told apart when both are the same one. */
  readonly pressure: (which: 'first' | 'second') => string;
  /** One job as a sentence without full stop: "Rush the B gap right off the inside hip of the E". */
  readonly job: (job: Job) => string;
  /** What he does at the snap, the beginning of that sentence: "Drop to the seam left". */
  readonly move: (job: Job) => string;
  readonly run: (run: RunColumn, loose: readonly Gap[]) => string;
  readonly pass: (pass: PassColumn, facts: LookFacts) => string;
  /** Where he stands in the staff's words. */
  readonly aligned: (aligned: Aligned, facts: LookFacts) => string;
  /** One value of a sentence. */
  readonly datum: (datum: Datum) => string;
  /** The parts of a rule in words. */
  readonly rules: RuleWords;
}

/** The words of one setup, with the staff's own technique table put over the common one. */
export function makeLexicon(setup: Setup, staff: StaffWords): Lexicon {
  const defenders = defenderWords(setup.roles);
  const offence = playerWords(setup.look.players);
  const found = (id: PlayerId): PlayerWords => {
    const words = offence.get(id);
    if (words === undefined) throw new Error(`Player ${id} is not in the look`);
    return words;
  };
  const playerLetter = (id: PlayerId): string => found(id).short;
  const names: NameWords<LookNames> = {
    gap: gapName,
    who: (role) => `the ${defenders.role(role)}`,
    zone: zoneName,
    receiver: playerLetter,
  };
  const words: Omit<Lexicon, 'datum'> = {
    letter: defenders.letter,
    roleName: defenders.name,
    role: defenders.role,
    roles: defenders.roles,
    gap: gapName,
    gaps: (gaps) => listed(gaps.map(gapName), 'no gap'),
    playerLetter,
    player: (id) => found(id).spoken,
    players: (ids) =>
      listed(
        ids.map((id) => found(id).spoken),
        'nobody',
      ),
    pressure: (which) => pressureName(setup, which),
    job: (job) => jobSentence(job, names),
    move: (job) => jobMove(job, names),
    run: runCell,
    pass: (pass, facts) => passCell(pass, facts, playerLetter),
    aligned: (aligned, facts) => alignmentText(aligned, facts, staff),
    rules: makeRuleWords(setup.roles, staff),
  };
  return { ...words, datum: (datum) => datumText(datum, words) };
}

function pressureName(setup: Setup, which: 'first' | 'second'): string {
  if (which === 'first') {
    return setup.second?.name === setup.first.name ? `${setup.first.name} (first)` : setup.first.name;
  }
  if (setup.second === null) throw new Error('A sentence names a second pressure, and there is none');
  return setup.second.name === setup.first.name ? `${setup.second.name} (second)` : setup.second.name;
}

function datumText(datum: Datum, words: Omit<Lexicon, 'datum'>): string {
  switch (datum.kind) {
    case 'role':
      return words.role(datum.role);
    case 'roles':
      return words.roles(datum.roles);
    case 'gap':
      return words.gap(datum.gap);
    case 'gaps':
      return words.gaps(datum.gaps);
    case 'letter':
      return datum.letter;
    case 'side':
      return datum.side;
    case 'player':
      return words.player(datum.player);
    case 'players':
      return words.players(datum.players);
    case 'job':
      return words.job(datum.job);
    case 'zone':
      return `the ${zoneName(datum.zone, datum.side)}`;
    case 'who':
      return words.rules.who(datum.who);
    case 'pressure':
      return words.pressure(datum.which);
    case 'number':
      return numberText(datum.value);
    case 'word':
      return datum.word;
    default:
      return assertNever(datum);
  }
}
