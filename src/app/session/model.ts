import { useMemo } from 'react';
import type { Analysis } from '../../engine/index.ts';
import { buildReport, makeLexicon, type FindingRow, type Lexicon, type Report } from '../../report/index.ts';
import { buildScene, type Scene } from '../../scene/index.ts';
import { standings, type AppState, type NothingToShow, type Standing } from '../../store/index.ts';
import { useApp, useSession } from './session.ts';

/** What the board shows, worked out once for all panels. */
export interface BoardModel {
  readonly state: AppState;
  readonly analysis: Analysis;
  readonly report: Report;
  readonly lexicon: Lexicon;
  readonly scene: Scene;
  readonly men: readonly Standing[];
}

/** The model of the board as it stands, a dragged man included; or what the playbook lacks for one. */
export function useBoardModel(): BoardModel | NothingToShow {
  const { analyst } = useSession();
  const state = useApp(wholeState);
  const { playbook, view } = state;
  const result = analyst.onBoard(state);
  const analysis = result.ok ? result.value : null;
  const words = useMemo(
    () =>
      analysis === null
        ? null
        : {
            report: buildReport(analysis, playbook.words),
            lexicon: makeLexicon(analysis.setup, playbook.words),
            men: standings(analysis),
          },
    [analysis, playbook.words],
  );
  const finding = words?.report.findings.find(({ key }) => key === view.lit) ?? null;
  const scene = useMemo(
    () => (analysis === null ? null : sceneOf(analysis, view.zoom, finding)),
    [analysis, view.zoom, finding],
  );
  if (!result.ok) return result.problem;
  if (words === null || scene === null) throw new Error('An analysis without words or picture');
  return { state, analysis: result.value, scene, ...words };
}

function wholeState(state: AppState): AppState {
  return state;
}

function sceneOf(analysis: Analysis, view: AppState['view']['zoom'], finding: FindingRow | null): Scene {
  const lit = { roles: finding?.who ?? [], gaps: finding?.gaps ?? [] };
  return buildScene(analysis, { detail: 'full', view, room: null, lit });
}
