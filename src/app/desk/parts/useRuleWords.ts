import { useMemo } from 'react';
import { makeRuleWords, type RuleWords } from '../../../report/index.ts';
import { useApp } from '../../session/session.ts';

/** The words of the playbook's rules. */
export function useRuleWords(): RuleWords {
  const roles = useApp((state) => state.playbook.roles);
  const staff = useApp((state) => state.playbook.words);
  return useMemo(() => makeRuleWords(roles, staff), [roles, staff]);
}
