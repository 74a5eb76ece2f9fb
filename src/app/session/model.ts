import { useMemo } from 'react';
import type { Playbook } from '../../document/index.ts';
import type { Analysis } from '../../engine/index.ts';
import { buildReport, makeLexicon, type Lexicon, type Report } from '../../report/index.ts';
import { buildScene, WHOLE_PICTURE, type Scene } from '../../scene/index.ts';
import { standings, type AppState, type NothingToShow, type Standing, type View } from '../../store/index.ts';
import { useSession, useSettledState } from './session.ts';

/** What the board shows, worked out once for all panels. */
export interface BoardModel {
  readonly state: AppState;
  readonly analysis: Analysis;
  readonly report: Report;
  readonly lexicon: Lexicon;
  /** What is on the field: the call as it is, or as the suggestion that is tried would make it. */
  readonly shown: Shown;
}

/** One analysis as the field shows it. */
export interface Shown {
  readonly analysis: Analysis;
  readonly report: Report;
  readonly scene: Scene;
  readonly men: readonly Standing[];
  /** True: it is what a suggestion would make of the call. */
  readonly tried: boolean;
}

/**
 * The model of the board as it stands, or what the playbook lacks for one. A dragged man is in it as far as the state has
 * settled: the field itself moves him every frame.
 */
export function useBoardModel(): BoardModel | NothingToShow {
  const { analyst } = useSession();
  const state = useSettledState();
  const { words } = state.playbook;
  const result = useMemo(() => analyst.onBoard(state), [analyst, state]);
  const analysis = result.ok ? result.value : null;
  const trial = analyst.onTrial(state);
  const report = useReport(analysis, words);
  const trialReport = useReport(trial, words);
  const lexicon = useMemo(() => (analysis === null ? null : makeLexicon(analysis.setup, words)), [analysis, words]);
  const onField = trial ?? analysis;
  const { view } = state;
  const scene = useMemo(() => (onField === null ? null : sceneOf(onField, view)), [onField, view]);
  return useMemo(() => {
    if (!result.ok) return result.problem;
    if (onField === null || report === null || lexicon === null || scene === null) {
      throw new Error('An analysis without words or picture');
    }
    return {
      state,
      analysis: result.value,
      report,
      lexicon,
      shown: {
        analysis: onField,
        report: trialReport ?? report,
        scene,
        men: standings(onField),
        tried: trial !== null,
      },
    };
  }, [state, result, report, lexicon, onField, trialReport, scene, trial]);
}

function useReport(analysis: Analysis | null, words: Playbook['words']): Report | null {
  return useMemo(() => (analysis === null ? null : buildReport(analysis, words)), [analysis, words]);
}

function sceneOf(analysis: Analysis, { zoom, lit, answers, overlay }: View): Scene {
  // What was drawn over another look has no meaning here.
  const drawn = overlay?.look === analysis.setup.look.id ? overlay : null;
  return buildScene(analysis, {
    ...WHOLE_PICTURE,
    view: zoom,
    lit: lit ?? WHOLE_PICTURE.lit,
    answers,
    run: drawn?.kind === 'run' ? drawn.index : null,
    protection: drawn?.kind === 'protection' ? drawn.index : null,
  });
}
