/** Every edit in words: the sentence and what is said below it, with bare ids and notation in the blanks. */
import { describe, expect, it } from 'vitest';
import { asLookId, asPressureId, asRoleId, type Because, type RuleJob } from '../../../src/engine/index.ts';
import { describeEdit, type Edit } from '../../../src/engine/edits/index.ts';
import { ruleJob, sayAll, THREE_DEEP, who } from '../book.ts';

const inP = { which: 'second', pressure: asPressureId('p') } as const;
const nose = { ...inP, who: who('@N') } as const;
const look = { id: asLookId('look'), name: '11 tight end' };
const told = (job: string) => ({ basis: 'movement', job: ruleJob(job), preSnap: null }) as const;
const given = (job: string, at: number | null = null): Edit => ({
  kind: 'job',
  ...nose,
  to: { kind: 'given', at, told: told(job) },
});
const duty = (job: string): Edit => ({
  kind: 'duty',
  coverage: { id: THREE_DEEP.id, name: THREE_DEEP.name },
  who: who('safety-away'),
  job: ruleJob(job),
});

const rows: readonly (readonly [edit: Edit, says: readonly string[]])[] = [
  [{ kind: 'turn', turn: 'same' }, ['turn second to the side of the first']],
  [{ kind: 'turn', turn: 'opposite' }, ['turn second opposite the first']],
  [{ kind: 'turn', turn: 'own' }, ['let second go by its own rule']],
  [{ kind: 'swap' }, ['let first and second change places']],
  [{ kind: 'coverage', coverage: THREE_DEEP }, ['play Three deep behind it']],
  [{ kind: 'rushers', count: 5 }, ['say that 5 come']],
  [{ kind: 'leave-out', ...inP, look }, ['do not run second against 11 tight end']],
  [
    { kind: 'tie-break', ...inP, step: { kind: 'fixed', side: 'left' } },
    ['where nothing decides its side, let second go left'],
  ],
  [
    { kind: 'tie-break', ...inP, step: { kind: 'strength', by: 'field', toward: 'to' } },
    ['where nothing decides its side, let second go to the field'],
  ],
  [
    { kind: 'tie-break', ...inP, step: { kind: 'strength', by: 'back', toward: 'away' } },
    ['where nothing decides its side, let second go away from the back'],
  ],
  [
    { kind: 'tie-break', ...inP, step: { kind: 'role', role: asRoleId('S'), toward: 'to' } },
    ['where nothing decides its side, let second go to the side of S'],
  ],
  [
    { kind: 'tie-break', ...inP, step: { kind: 'role', role: asRoleId('S'), toward: 'away' } },
    ['where nothing decides its side, let second go away from S'],
  ],
  [
    { kind: 'stand', look, role: asRoleId('LE'), x: -2.65, y: 0.8 },
    ['stand LE by hand against 11 tight end', '2.65 yards from the ball to the left, 0.8 deep'],
  ],
  [
    { kind: 'stand', look, role: asRoleId('RE'), x: 2.65, y: 0.8 },
    ['stand RE by hand against 11 tight end', '2.65 yards from the ball to the right, 0.8 deep'],
  ],
  [
    { kind: 'stand', look, role: asRoleId('N'), x: 0, y: 0.5 },
    ['stand N by hand against 11 tight end', 'over the ball, 0.5 deep'],
  ],
  [{ kind: 'untell', ...nose }, ['in second tell @N nothing']],
  [
    {
      kind: 'job',
      ...nose,
      to: {
        kind: 'other',
        cases: [
          { when: [], ...told('rush A-call slant') },
          { when: [], ...told('rush A-away') },
        ],
      },
    },
    [
      'in second tell @N what the other pressure tells him',
      'he rushes the call-side A gap',
      'he plays it as: slant',
      'he rushes the away-side A gap',
      'he plays it as: penetrate',
    ],
  ],
  [
    { kind: 'surface', ...nose, surface: { side: 'call', compare: 'at-least', count: 3 }, told: null },
    ['in second tell @N nothing on one surface', '3 or more men are attached on the call side'],
  ],
  [
    {
      kind: 'surface',
      ...nose,
      surface: { side: 'mine', compare: 'at-most', count: 2 },
      told: told('contain edge-mine'),
    },
    [
      'in second tell @N another job on one surface',
      'no more than 2 men are attached on his side',
      'he rushes the edge gap on his side and contains',
      'he plays it as: penetrate',
    ],
  ],
  [
    given('rush A-left+A-right two-gap'),
    ['in second tell @N another job', 'he rushes the A gap left and the A gap right', 'he plays it as: two gap'],
  ],
  [
    given('rush outside:end-other loop over:end-call second:inside-away spill peel', 1),
    [
      'in second tell @N another job in his rule 2',
      'he rushes the gap outside the end on the other side',
      'he plays it as: loop',
      'on the edge: spill',
      'past end-call',
      'he goes second, with inside-away',
      'he leaves with the back if the back flares',
    ],
  ],
  [
    given('fit outside:last-call force'),
    ['in second tell @N another job', 'he fits the gap outside the call-side last man', 'he is force'],
  ],
  [
    duty('drop third-away may edge-away force'),
    [
      'in Three deep tell safety-away another job',
      'he drops to the away-side third',
      'he is force',
      'he may fit the away-side edge gap',
    ],
  ],
  [
    {
      kind: 'job',
      ...nose,
      to: { kind: 'given', at: null, told: { ...told('rush A-call'), preSnap: { kind: 'depth', depth: 6 } } },
    },
    [
      'in second tell @N another job',
      'he rushes the call-side A gap',
      'he plays it as: penetrate',
      'before the snap he stands 6 yards deep',
    ],
  ],
  [
    {
      kind: 'job',
      ...nose,
      to: {
        kind: 'given',
        at: null,
        told: { ...told('rush A-call'), preSnap: { kind: 'heels', of: who('end-call') } },
      },
    },
    [
      'in second tell @N another job',
      'he rushes the call-side A gap',
      'he plays it as: penetrate',
      'before the snap he stands on the heels of end-call',
    ],
  ],
  [duty('drop middle'), ['in Three deep tell safety-away another job', 'he drops to the middle']],
  [
    duty('man #2-call own B-call'),
    [
      'in Three deep tell safety-away another job',
      'he has the call-side number 2',
      'against the run he owns the call-side B gap',
    ],
  ],
  [duty('man back2'), ['in Three deep tell safety-away another job', 'he has back number 2 from his side']],
  [duty('spy'), ['in Three deep tell safety-away another job', 'he spies the passer']],
  [duty('fit B-call'), ['in Three deep tell safety-away another job', 'he fits the call-side B gap']],
];

describe('an edit in words', () => {
  it.each(rows.map(([edit, says]) => [says[0], edit, says] as const))('%s', (_, edit, says) => {
    expect(sayAll(describeEdit(edit))).toEqual(says);
  });

  it('every kind of edit and of job is shown', () => {
    expect(new Set(rows.map(([edit]) => edit.kind)).size).toBe(11);
    const jobs = rows.flatMap(([edit]): readonly RuleJob['kind'][] =>
      edit.kind === 'duty'
        ? [edit.job.kind]
        : edit.kind === 'job' && edit.to.kind === 'given'
          ? [edit.to.told.job.kind]
          : edit.kind === 'surface' && edit.told !== null
            ? [edit.told.job.kind]
            : [],
    );
    expect(new Set(jobs)).toEqual(new Set(['rush', 'contain', 'fit', 'drop', 'man', 'spy']));
  });

  it('no blank is left open', () => {
    const open = (because: Because): readonly string[] => [
      ...[...because.template.matchAll(/\{(\w+)\}/g)].flatMap(([, name]) =>
        name === undefined || Object.hasOwn(because.data, name) ? [] : [name],
      ),
      ...because.because.flatMap(open),
    ];
    expect(rows.flatMap(([edit]) => open(describeEdit(edit)))).toEqual([]);
  });
});
