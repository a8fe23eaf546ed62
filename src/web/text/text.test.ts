import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { de } from './de.ts';
import { en } from './en.ts';
import { messageText, placeholders } from './message.ts';

const web = join(import.meta.dirname, '..');
const files = (ending: string) =>
  readdirSync(web, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith(ending) && (!file.startsWith('text') || file.endsWith('text.svelte.ts')))
    .map((file) => ({ file, text: readFileSync(join(web, file), 'utf8') }));

describe('message catalogues', () => {
  it('have the same keys and the same places to fill', () => {
    expect(Object.keys(de).sort()).toEqual(Object.keys(en).sort());
    for (const key of Object.keys(en) as (keyof typeof en)[]) {
      expect(placeholders(de[key]), key).toEqual(placeholders(en[key]));
    }
  });

  it('hold every key that a screen asks for', () => {
    const asked = [...files('.svelte'), ...files('.ts')].flatMap(({ text }) =>
      [...text.matchAll(/\bt\('([^']+)'/g)].map((m) => m[1] as string),
    );
    expect(asked.length).toBeGreaterThan(200);
    expect(asked.filter((key) => !(key in en))).toEqual([]);
  });

  it('hold nothing that no screen asks for', () => {
    const sources = [...files('.svelte'), ...files('.ts')].map(({ text }) => text).join('\n');
    const begun = [...sources.matchAll(/\bt(?:Maybe)?\(`([^$`]*)\$/g)].map((m) => m[1] as string);
    const unused = Object.keys(en).filter(
      (key) => !sources.includes(`'${key}'`) && !begun.some((start) => key.startsWith(start)),
    );
    expect(unused).toEqual([]);
  });
});

describe('a message', () => {
  it('fills in names and numbers the way of the locale', () => {
    expect(messageText('{n} flies in {cup}', { n: 1234.5, cup: 'M1' }, 'en')).toBe('1,234.5 flies in M1');
    expect(messageText('{n} Fliegen', { n: 1234.5 }, 'de')).toBe('1.234,5 Fliegen');
  });

  it('picks its form by the count', () => {
    const cups = { one: 'one cup', other: '{count} cups' };
    expect([1, 2, 0].map((count) => messageText(cups, { count }, 'en'))).toEqual(['one cup', '2 cups', '0 cups']);
  });
});
