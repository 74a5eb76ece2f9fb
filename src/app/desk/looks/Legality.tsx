import { useMemo, type ReactElement } from 'react';
import { formationClasses, readLook, type Look, type RuleLevel } from '../../../engine/index.ts';
import { FORMATION_WORDS, lookFaultTexts } from '../../../report/index.ts';
import { VerdictMark } from '../../parts/VerdictMark.tsx';
import { useSettled } from '../../parts/useSettled.ts';
import { useApp } from '../../session/session.ts';

const LEVEL_WORDS: Readonly<Record<RuleLevel, string>> = {
  'high-school': 'high-school',
  college: 'college',
  professional: 'professional',
};

/** What the look is, and whether it may be snapped like this under the playbook's rules. */
export function Legality({ look }: { readonly look: Look }): ReactElement {
  const level = useApp((state) => state.playbook.team.level);
  const spot = useApp((state) => state.board.spot);
  const { personnel, faults, formation } = useMemo(() => {
    const facts = readLook(look, level, spot);
    return {
      personnel: facts.personnel,
      faults: lookFaultTexts(look, facts.faults),
      formation: formationClasses(facts).map((each) => FORMATION_WORDS[each])[0],
    };
  }, [look, level, spot]);
  const words =
    faults.length === 0
      ? `Legal under ${LEVEL_WORDS[level]} rules`
      : `Not legal under ${LEVEL_WORDS[level]} rules: ${faults.join('; ')}`;
  return (
    <div className="legality">
      <p>
        {personnel} personnel{formation === undefined ? '' : `, ${formation}`}
      </p>
      <p className={faults.length === 0 ? 'verdict-word' : 'verdict-word is-illegal'}>
        <VerdictMark verdict={faults.length === 0 ? 'clean' : 'check'} size={16} />
        {faults.length === 0 ? words : `Not legal under ${LEVEL_WORDS[level]} rules`}
      </p>
      {faults.length > 0 && (
        <ul className="use-list">
          {faults.map((fault) => (
            <li key={fault}>{fault}</li>
          ))}
        </ul>
      )}
      <p className="unseen" role="status">
        {useSettled(words)}
      </p>
    </div>
  );
}
