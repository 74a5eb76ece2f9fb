import * as z from 'zod';
import { playbookSchema, VERSION } from './schema/playbook.ts';

/** Where the committed copy of the schema can be found by other programs. */
const ADDRESS = `urn:gapwright:playbook:${VERSION}`;

/**
 * The shape of a playbook file as JSON Schema, draft 2020-12, for editors and other programs. It says what one place may
 * hold; that ids exist and rules decide is checked only on opening.
 */
export function playbookJsonSchema(): Readonly<Record<string, unknown>> {
  const { $schema, ...rest } = z.toJSONSchema(playbookSchema, { io: 'input', target: 'draft-2020-12' });
  return { $schema, $id: ADDRESS, ...rest };
}
