import type { Aligned, Analysis, RoleId } from '../../engine/index.ts';

const WORDS: Readonly<Record<Aligned['by'], string>> = {
  rule: 'by his rule',
  hand: 'by hand',
  pressure: 'by the pressure',
};

/** What put a defender where he stands. */
export function placedBy({ assignments }: Analysis, role: RoleId): string {
  const assignment = assignments.find(({ aligned }) => aligned.role.id === role);
  if (assignment === undefined) throw new Error('A man of the report is not in the analysis');
  return WORDS[assignment.aligned.by];
}
