import type { ReactElement } from 'react';
import type { Coverage, CoverageId } from '../../../engine/index.ts';
import { setCoverageTells, setNeeds } from '../../../store/index.ts';
import { useApp } from '../../session/session.ts';
import { useEdit } from '../parts/useEdit.ts';
import { useRuleWords } from '../parts/useRuleWords.ts';
import { NeedList } from './NeedList.tsx';
import { TellList } from './TellList.tsx';

/** One shell: the zones it needs and who may take them, what it tells whom, and who forces. */
export function CoverageDesk({ id }: { readonly id: CoverageId }): ReactElement | null {
  const edit = useEdit();
  const words = useRuleWords();
  const coverage = useApp((state) => state.playbook.coverages.find((each) => each.id === id) ?? null);
  const roles = useApp((state) => state.playbook.roles);
  const disabled = useApp((state) => state.readOnly);
  if (coverage === null) return null;
  const putNeeds = (needs: Coverage['needs'], gesture: string | null): void => {
    edit(`changed the zones of ${coverage.name}`, gesture, (now) => setNeeds(now, { coverage: id, needs }));
  };
  const putTells = (tells: Coverage['tells'], gesture: string | null): void => {
    edit(`changed what ${coverage.name} tells`, gesture, (now) => setCoverageTells(now, { coverage: id, tells }));
  };
  return (
    <section className="editor" aria-label={coverage.name} key={id}>
      <p className="rule-said">{words.forces(coverage.tells)}</p>
      <h3>Zones that must be filled</h3>
      <NeedList needs={coverage.needs} roles={roles} words={words} disabled={disabled} onChange={putNeeds} />
      <h3>What each man is told</h3>
      <p className="hint">Only men whom the rush leaves free hear it. The first line that names a man is his.</p>
      <TellList tells={coverage.tells} roles={roles} words={words} disabled={disabled} onChange={putTells} />
    </section>
  );
}
