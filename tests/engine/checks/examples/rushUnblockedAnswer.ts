import { rushUnblockedAnswer } from '../../../../src/engine/checks/rushUnblockedAnswer.ts';
import type { KnownProtection, Side } from '../../../../src/engine/index.ts';
import { LOOKS, pressure, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const look = LOOKS['10 doubles'];
const halfSlide = (slideSide: Side): readonly KnownProtection[] => [{ protection: 'half-slide-six', slideSide }];
const withoutTheBack: readonly KnownProtection[] = [{ protection: 'half-slide-five', slideSide: 'left' }];
const up = (depth: number) => ({ kind: 'depth', depth }) as const;
const edgeAndB = pressure('p', [
  tell('outside-call', 'path', 'contain edge-call', up(1)),
  tell('inside-call', 'path', 'rush B-call', up(2)),
]);
const FREE = 'S comes free against half slide, free release, turned left';
const NOBODY = 'nobody has S, who comes to C-right';

/*
 * Away from the slide the back has the first who comes through inside him; a second one is free ("Understanding 1/2 Slide
 * Protection", Blitzology, 2 Mar 2010). The times are the engine's own estimates.
 */
export const examples: CheckExamples = {
  check: rushUnblockedAnswer,
  found: [
    {
      name: 'two come on one side and the line has turned to the other',
      look,
      protections: halfSlide('left'),
      first: edgeAndB,
      finds: [
        {
          says: [
            'S comes free against half slide with the back, turned left',
            'he is there in about 2.1 s: the hot throw beats him, a deeper one does not (an estimate)',
            NOBODY,
          ],
          who: 'S',
          gaps: 'C-right',
        },
      ],
    },
    {
      name: 'from the line, at the speed of professionals',
      look,
      level: 'professional',
      protections: withoutTheBack,
      first: pressure('p', [tell('outside-call', 'path', 'contain edge-call', up(1))]),
      finds: [
        {
          says: [FREE, 'he is there in about 1.8 s, before even a quick throw (an estimate)', NOBODY],
          who: 'S',
          gaps: 'C-right',
        },
      ],
    },
    {
      name: 'a safety from 11 yards',
      look,
      protections: withoutTheBack,
      first: pressure('p', [tell('safety-call', 'path', 'rush B-call')]),
      finds: [
        {
          says: [
            'SS comes free against half slide, free release, turned left',
            'he is there in about 3 s, after the ball is gone (an estimate)',
            'nobody has SS, who comes to B-right',
          ],
          who: 'SS',
          gaps: 'B-right',
        },
      ],
    },
    {
      name: 'two men might pass',
      look: 'line te:Y@4 wr:X@-18 wr:H@-9,-1.5 wr:Z@16,-1.5 qb:Q@0,-5 qb:P@-1.5,-5',
      protections: withoutTheBack,
      first: pressure('p', [tell('outside-call', 'path', 'contain edge-call', up(1))]),
      finds: [
        {
          says: [
            FREE,
            'how soon cannot be told: in this look it is open who passes',
            'nobody has S, who comes to D-right',
          ],
          who: 'S',
          gaps: 'D-right',
        },
      ],
    },
  ],
  leftAlone: [
    { name: 'the line turns to them', look, protections: halfSlide('right'), first: edgeAndB },
    { name: 'nobody knows how they protect', look, first: edgeAndB },
    {
      name: 'the back has the one who comes',
      look,
      protections: halfSlide('left'),
      first: pressure('p', [tell('inside-call', 'path', 'rush B-call', up(2))]),
    },
    { name: 'nobody but the base rush comes', look, protections: halfSlide('left'), first: pressure('p', []) },
  ],
  cannotTell: [TIE],
};
