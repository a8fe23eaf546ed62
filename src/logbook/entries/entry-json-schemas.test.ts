/**
 * The published schemas are those that the checks give. `FLYLARDER_WRITE_FORMATS=1 npx vitest run
 * src/logbook/entries/entry-json-schemas.test.ts` writes them anew after a check has changed.
 */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { entryJsonSchemas } from './entry-json-schemas.ts';

const folder = join(import.meta.dirname, '../../../docs/formats/entries');
const fileOf = (kind: string) => `${kind}.schema.json`;
const textOf = (schema: unknown) => `${JSON.stringify(schema, null, 2)}\n`;
const schemas = Object.entries(entryJsonSchemas());

if (process.env.FLYLARDER_WRITE_FORMATS === '1') {
  mkdirSync(folder, { recursive: true });
  for (const [kind, schema] of schemas) writeFileSync(join(folder, fileOf(kind)), textOf(schema));
}

it('docs/formats/entries holds one schema for each kind', () => {
  expect(readdirSync(folder).sort()).toEqual(schemas.map(([kind]) => fileOf(kind)).sort());
});

for (const [kind, schema] of schemas) {
  it(`the published schema of "${kind}" is the one that its check gives`, () => {
    expect(readFileSync(join(folder, fileOf(kind)), 'utf8')).toBe(textOf(schema));
  });
}
