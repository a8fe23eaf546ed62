import { describe, expect, it } from 'vitest';
import { day } from '../foundation/index.ts';
import { draftFromWords } from './entry-words.ts';

const on = day('2026-11-25');
const read = (kind: string, ...words: string[]) => draftFromWords(kind, words, on);

describe('an entry from words', () => {
  it('reads numbers, lists, switches and text as the kind has them', () => {
    expect(read('seen', 'culture=12', 'present=eggs,larvae', 'count=40', 'mould=yes', 'note=a = b')).toEqual({
      ok: true,
      value: {
        kind: 'seen',
        on,
        culture: '12',
        present: ['eggs', 'larvae'],
        count: 40,
        mould: true,
        note: 'a = b',
      },
    });
  });

  it('fills a field within a field', () => {
    expect(
      read('household', 'purchase.leadDays=3', 'purchase.deliveryWeekdays=tue', 'weights.perCup=1.5'),
    ).toMatchObject({
      value: { purchase: { leadDays: 3, deliveryWeekdays: ['tue'] }, weights: { perCup: 1.5 } },
    });
  });

  it('reads JSON where a field is a list of things', () => {
    const ingredients = '[{"ingredient":"rolled-oats","massG":60}]';
    expect(read('recipe', 'recipe=oats', `ingredients=${ingredients}`, 'waterMl=300')).toMatchObject({
      value: { ingredients: JSON.parse(ingredients) },
    });
  });

  it('takes the day from a word', () =>
    expect(read('note', 'text=x', 'on=2026-11-01')).toMatchObject({ value: { on: '2026-11-01' } }));

  it('takes no field twice, nor a part of one that was given whole', () => {
    for (const words of [
      ['text=a', 'text=b'],
      ['purchase={"leadDays":1}', 'purchase.leadDays=3'],
      ['purchase.leadDays=3', 'purchase=5'],
    ]) {
      expect(read(words[0]?.startsWith('text') ? 'note' : 'household', ...words)).toMatchObject({
        problems: [{ found: 'the field twice' }],
      });
    }
  });

  it.each([
    ['harvested', 'flies=1e400', /flies/],
    ['harvested', 'flies=0x10', /flies/],
    ['harvested', 'flies=', /flies/],
    ['seen', 'present=wings', /present/],
    ['seen', '__proto__=1', /__proto__/],
    ['household', 'purchase.leadDays.x=1', /purchase\.leadDays\.x/],
    ['note', '=x', /note/],
  ])('%s %s is refused with its place', (kind, word, where) => {
    const result = read(kind, word);
    expect(result.ok).toBe(false);
    if (!result.ok) expect(result.problems.map((p) => p.where).join()).toMatch(where);
  });
});
