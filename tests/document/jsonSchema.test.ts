/** The published JSON Schema: up to date, sound by draft 2020-12, and of one mind with the schema files are opened by. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { playbookJsonSchema, VERSION } from '../../src/document/index.ts';
import { playbookSchema } from '../../src/document/schema/playbook.ts';
import { places, withAt } from './json.ts';
import { sampleJson, type Json } from './samplePlaybook.ts';

const COMMITTED: unknown = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../docs/playbook.schema.json'), 'utf8'),
);

/** Keywords this schema may use. Source: JSON Schema draft 2020-12, "Core" section 8 and "Validation" sections 6 and 9. */
const KEYWORDS = new Set([
  ...['$schema', '$id', '$ref', '$defs', 'title', 'description', 'type', 'const', 'enum', 'oneOf', 'anyOf'],
  ...['properties', 'required', 'additionalProperties', 'items', 'minItems', 'maxItems'],
  ...['minimum', 'maximum', 'pattern', 'maxLength'],
]);
const TYPES = ['array', 'boolean', 'integer', 'null', 'number', 'object', 'string'];

type Schema = { readonly [keyword: string]: Json };

function isSchema(value: unknown): value is { [keyword: string]: Json } {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The schema and every schema inside it. */
function schemas(schema: Schema): readonly Schema[] {
  const named = [schema['properties'], schema['$defs']].filter(isSchema).flatMap((each) => Object.values(each));
  const listed = [schema['oneOf'], schema['anyOf']].filter((each) => Array.isArray(each)).flat();
  return [schema, ...[...named, ...listed, schema['items']].filter(isSchema).flatMap(schemas)];
}

if (!isSchema(COMMITTED)) throw new Error('The committed schema is an object');
const ALL = schemas(COMMITTED);

it('is the committed one: npm run schema writes it', () => {
  expect(playbookJsonSchema()).toEqual(COMMITTED);
});

describe('draft 2020-12', () => {
  it('is what it says it is', () => {
    expect(COMMITTED['$schema']).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(COMMITTED['$id']).toBe(`urn:gapwright:playbook:${VERSION}`);
    expect(ALL.length).toBeGreaterThan(200);
  });

  it('uses only keywords and types of the draft', () => {
    for (const schema of ALL) {
      expect([...KEYWORDS]).toEqual(expect.arrayContaining(Object.keys(schema)));
      if ('type' in schema) expect(TYPES).toContain(schema['type']);
    }
  });

  it('every reference leads to a definition, and every definition is referred to', () => {
    const targets = new Set(ALL.flatMap((schema) => (typeof schema['$ref'] === 'string' ? [schema['$ref']] : [])));
    const defined = Object.keys(isSchema(COMMITTED['$defs']) ? COMMITTED['$defs'] : {});
    expect([...targets].sort()).toEqual(defined.map((name) => `#/$defs/${name}`).sort());
  });

  it('every object lists all its keys and takes no others', () => {
    for (const schema of ALL.filter(({ type }) => type === 'object')) {
      expect(schema['additionalProperties']).toBe(false);
      expect(schema['required']).toEqual(Object.keys(isSchema(schema['properties']) ? schema['properties'] : {}));
    }
  });

  it('every list and text has a bound, and every pattern compiles as the draft recommends', () => {
    for (const schema of ALL) {
      if (schema['type'] === 'array') expect(schema['maxItems']).toEqual(expect.any(Number));
      if (schema['type'] === 'number' && !('const' in schema))
        expect(schema).toHaveProperty('maximum', expect.any(Number));
      if (schema['type'] !== 'string' || 'const' in schema || 'enum' in schema) continue;
      const { pattern, maxLength } = schema;
      expect(typeof pattern === 'string' || typeof maxLength === 'number').toBe(true);
      if (typeof pattern === 'string') expect(() => new RegExp(pattern, 'u')).not.toThrow();
    }
  });
});

it('says the same of a file as the schema it comes from, wherever the file is spoilt', () => {
  const published = z.fromJSONSchema(COMMITTED);
  const sample = sampleJson();
  const both = (value: Json) => [published.safeParse(value).success, playbookSchema.safeParse(value).success];
  expect(both(sample)).toEqual([true, true]);
  // Places of one kind come many times, so that each kind meets every value.
  const values: readonly Json[] = [null, '', 0, true, 'x'.repeat(121), 61, 'nobody'];
  const verdicts = places(sample).map(({ path }, index) => {
    const value = values[index % values.length] ?? null;
    return both(path.length === 0 ? value : withAt(sample, path, value));
  });
  expect(verdicts.filter(([first, second]) => first !== second)).toEqual([]);
  expect(new Set(verdicts.map(([first]) => first))).toEqual(new Set([true, false]));
});
