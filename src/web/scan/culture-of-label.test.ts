import { describe, expect, it } from 'vitest';
import { labels } from '../../app/index.ts';
import { day } from '../../foundation/index.ts';
import { type Entry, fold } from '../../logbook/index.ts';
import { cultureOfLabel } from './culture-of-label.ts';

const on = day('2026-11-25');
const started = (n: number, culture: string, label?: string) =>
  ({
    id: `0198c000-0000-7000-8000-00000000000${n}`,
    kind: 'started',
    on,
    recordedAt: '2026-11-25T08:00:00Z',
    by: 'test',
    culture,
    ...(label && { label }),
    strain: 'melanogaster',
    founders: 50,
  }) as Entry;
const facts = fold([started(1, 'M1'), started(2, 'Größe-2', 'Cellar 2')]);

describe("a label's code", () => {
  it('as it is printed opens its cup, whichever computer printed it', () => {
    const printed = labels(facts, { on, seed: 1, linkBase: 'https://some-host:9999/keeping/' });
    if (!printed.ok) throw new Error(printed.problems[0]?.found);
    const codes = new Map(printed.value.labels.map(({ link, culture }) => [culture, link]));
    expect(codes.size).toBe(2);
    for (const [culture, link] of codes) expect(cultureOfLabel(link, facts)).toBe(culture);
  });

  it('may be a bare key, or what stands on the label', () => {
    expect(cultureOfLabel(' M1\n', facts)).toBe('M1');
    expect(cultureOfLabel('cellar 2', facts)).toBe('Größe-2');
  });

  it('of anything else opens nothing', () => {
    for (const text of ['https://example.org/', 'http://host/#/culture/M9', 'http://host/#/culture/%', '']) {
      expect(cultureOfLabel(text, facts), text).toBeNull();
    }
  });
});
