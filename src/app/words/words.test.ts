import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Day, day, said, saidTogether, sentence, told } from '../../foundation/index.ts';
import { type Entry, fold } from '../../logbook/index.ts';
import { demoLogbook } from '../demo/demo-logbook.ts';
import { plan } from '../plan.ts';
import { today } from '../today.ts';
import { de } from './de.ts';
import { wordsOf } from './words.ts';

const source = join(import.meta.dirname, '../..');
const english = new Set(
  readdirSync(source, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts') && !file.endsWith('.test.ts') && file !== join('foundation', 'said.ts'))
    .flatMap((file) => saidIn(readFileSync(join(source, file), 'utf8'))),
);

/** The English texts of every sentence in a source file, with `{0}` for its values; braces in values are followed. */
function saidIn(text: string): string[] {
  return [...text.matchAll(/\bsaid`/g)].map((match) => {
    let [at, values, whole] = [match.index + 5, 0, ''];
    while (text[at] !== '`') {
      if (text.startsWith('${', at)) {
        whole += `{${values++}}`;
        at = endOfValue(text, at + 2);
      } else whole += text[at++];
    }
    return whole;
  });
}

function endOfValue(text: string, from: number): number {
  let [depth, at] = [1, from];
  for (; depth > 0; at++) depth += text[at] === '{' ? 1 : text[at] === '}' ? -1 : 0;
  return at;
}

const places = (text: string) => [...new Set(text.match(/\{\d\}/g) ?? [])].sort();

describe('German', () => {
  it('is there for every sentence that a room says, and for no other', () => {
    expect(english.size).toBeGreaterThan(35);
    expect([...english].filter((text) => /\p{L}{2}/u.test(text) && !(text in de))).toEqual([]);
    expect(Object.keys(de).filter((text) => !english.has(text))).toEqual([]);
  });

  it('has the same places to fill', () => {
    for (const [text, german] of Object.entries(de)) expect(places(german), text).toEqual(places(text));
  });

  it('is what a German keeper gets for every job of the demo', () => {
    const on = day('2026-11-25');
    const entries = demoLogbook(on).map((draft, i) => ({
      ...draft,
      id: `0190a000-0000-7000-8000-${String(i).padStart(12, '0')}`,
      recordedAt: `${draft.on}T20:00:00Z`,
      by: 'test',
    }));
    const facts = fold(entries as Entry[]);
    const answers = [
      today(facts, { on, seed: 1, language: 'de' }),
      plan(facts, { on, seed: 1, scenarios: 50, weeks: 8, language: 'de' }),
    ];
    const sentences = answers.flatMap((answer) => answer.jobs.map((job) => job.why));
    expect(sentences.length).toBeGreaterThan(20);
    expect(sentences.filter((text) => /\b(the|flies|about|and|is)\b|undefined|NaN|\{/.test(text))).toEqual([]);
  });
});

describe('a sentence', () => {
  it('writes days and numbers the way of its language', () => {
    const text = said`${{ day: '2026-12-03' as Day }}: ${1234.5} g`;
    expect(sentence(text, wordsOf())).toBe('Thu 3 Dec: 1,234.5 g');
    expect(sentence(text, wordsOf({ language: 'de' }))).toBe('Do 3. Dez: 1.234,5 g');
  });
  it('holds others', () => {
    const both = saidTogether(said`${'M1'} ${'ok'}.`, said`${{ list: ['a', said`${1}`] }}`);
    expect(sentence(both, wordsOf())).toBe('M1 ok. a, 1');
  });
  it('becomes text wherever it stands in an answer, and nothing else changes', () => {
    const answer = { n: 1, why: said`${2} cups`, more: [said`x`, null], plain: { text: 'a' } };
    expect(told(answer, wordsOf())).toEqual({ n: 1, why: '2 cups', more: ['x', null], plain: { text: 'a' } });
  });
});
