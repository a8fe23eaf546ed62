import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'svelte/compiler';
import { describe, expect, it } from 'vitest';
import { de } from './de.ts';
import { en } from './en.ts';
import { messageText, placeholders } from './message.ts';

const web = join(import.meta.dirname, '..');
const files = (ending: string) =>
  readdirSync(web, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith(ending) && !file.startsWith('text'))
    .map((file) => ({ file, text: readFileSync(join(web, file), 'utf8') }));

/** Attributes that people read or hear. */
const spoken = [
  'aria-label',
  'title',
  'placeholder',
  'alt',
  'aria-valuetext',
  'label',
  'legend',
  'hint',
  'missing',
  'done',
];

/** Every literal piece of text with a letter in a component's markup, units aside. */
function literals(source: string): string[] {
  const found: string[] = [];
  const visit = (node: unknown, attribute: string | null): void => {
    if (Array.isArray(node)) for (const each of node) visit(each, attribute);
    if (typeof node !== 'object' || node === null || Array.isArray(node)) return;
    const { type, name, data } = node as { type?: string; name?: string; data?: string };
    if (type === 'Text' && (attribute === null || spoken.includes(attribute))) found.push(data ?? '');
    const inside = type === 'Attribute' || type === 'StyleDirective' ? (name ?? '') : attribute;
    for (const [key, value] of Object.entries(node)) if (key !== 'css') visit(value, inside);
  };
  visit(parse(source, { modern: true }).fragment, null);
  return found.filter((text) => /\p{L}{2}/u.test(text.replace(/\b(mg|ml|kg|cm)\b/g, '')));
}

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

  it('are the only place with text: no component has words of its own', () => {
    const found = files('.svelte').flatMap(({ file, text }) =>
      literals(text).map((words) => `${file}: ${words.trim()}`),
    );
    expect(files('.svelte').length).toBeGreaterThan(30);
    expect(found).toEqual([]);
  });

  it('would be caught when hard-coded', () => {
    expect(literals('<p>Hello</p>')).toEqual(['Hello']);
    expect(literals('<button aria-label="Close it">x</button>')).toEqual(['Close it']);
    expect(literals('<p class="large">{words}</p>')).toEqual([]);
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
