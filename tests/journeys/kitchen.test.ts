/** A keeper's evening in the kitchen, by command line and HTTP alike: stock, medium, shopping, paper, calendar. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import ICAL from 'ical.js';
import { beforeAll, describe, expect, it } from 'vitest';
import { flylarder, folderOfFile } from './command-line.ts';
import { end, serve } from './serving.ts';

const on = ['--on', '2026-11-20'];
const stock = [
  { item: 'potato-flakes', amount: 1, unit: 'kg', pricePerUnit: 4.5 },
  { item: 'powdered-sugar', amount: 300, unit: 'g', pricePerUnit: 0.003 },
  { item: 'brewers-yeast', amount: 40, unit: 'g', pricePerUnit: 0.03 },
  { item: 'vinegar', amount: 1, unit: 'l' },
  { item: 'lid', amount: 2, unit: 'piece', pricePerUnit: 0.1 },
];

const folder = folderOfFile();
beforeAll(() => {
  expect(flylarder(folder, ['demo', ...on]).status).toBe(0);
  const lines = stock.map((fields) => JSON.stringify({ kind: 'stock', on: '2026-11-19', ...fields }));
  writeFileSync(join(folder, 'stock.jsonl'), `${lines.join('\n')}\n`);
  expect(flylarder(folder, ['record', 'stock.jsonl']).err).toBe('');
});
const asked = (args: string[]) => JSON.parse(flylarder(folder, [...args, ...on, '--json']).out);

describe('in the kitchen', () => {
  it('mix says what the stock makes, what to weigh, and what it costs', () => {
    const answer = asked(['mix', '--recipe', 'flake-and-vinegar', '--medium', '150']);
    // 30 of 1040 g of the recipe is yeast; 157.9 g go into a cup of 150 g with 5 % lost: 4.55 g of 40.
    expect([answer.cups, answer.onHand.limitedBy]).toEqual([8, 'brewers-yeast']);
    expect(answer.cost.missingPrices).toContain('vinegar');
    const text = flylarder(folder, ['mix', '--recipe', 'flake-and-vinegar', ...on]);
    expect(text.status).toBe(0);
    expect(text.out).toContain('Step by step');
    expect(text.out).toMatch(/A cup costs 0\.\d\d EUR.*without vinegar/s);
  });
  it('a preservative too strong is a warning: the answer comes, with status 1', () => {
    const strong = flylarder(folder, [
      'mix',
      '--cups',
      '2',
      '--preservative',
      'methylparaben',
      '--percent',
      '0.5',
      ...on,
    ]);
    expect([strong.status, strong.err]).toEqual([1, '']);
    expect(strong.out).toMatch(/! 0\.5 % w\/v of Methylparaben/);
    const right = ['--preservative', 'methylparaben', '--percent', '0.1', '--stock-percent', '10'];
    const [dose] = asked(['mix', '--cups', '2', ...right]).doses;
    expect(dose.verdict).toBe('usual');
    expect(dose.stockMl).toBeCloseTo(dose.amount * 10, 9);
  });
  it('shopping lists what runs out until a day', () => {
    const answer = asked(['shopping', '--recipe', 'flake-and-vinegar', '--until', '2027-01-15']);
    const items = answer.shoppingList.map((line: { item: string }) => line.item);
    expect(items).toEqual(expect.arrayContaining(['lid', 'brewers-yeast']));
    // The demo's keeper counts all that a cup takes.
    expect(answer.uncounted).toEqual([]);
  });
  it('the ledger has a line for each week', () => {
    const answer = asked(['ledger']);
    expect(answer.weeks.length).toBeGreaterThan(10);
    expect(answer.mediumGPerFly).toBeGreaterThan(0);
    expect(flylarder(folder, ['ledger', ...on]).out).toContain('week of');
  });
});

describe('on paper', () => {
  it('labels and sheets are pages that print', () => {
    const labels = flylarder(folder, ['labels', '--sheet', 'a4-63.5x38.1-21', ...on]);
    expect([labels.status, labels.err]).toEqual([0, '']);
    expect(labels.out).toMatch(/^<!doctype html>[\s\S]*<svg[\s\S]*<\/html>\n$/);
    for (const kind of [['month'], ['shelf']]) {
      const out = `${kind[0]}.html`;
      expect(flylarder(folder, ['sheet', ...kind, ...on, '--out', out]).err).toBe('');
      expect(readFileSync(join(folder, out), 'utf8')).toMatch(/^<!doctype html>/);
    }
  });
  it('the calendar moves an event when the plan moves it', () => {
    const read = (day: string) => {
      const { out } = flylarder(folder, ['calendar', '--weeks', '6', '--on', day]);
      return new ICAL.Component(ICAL.parse(out)).getAllSubcomponents('vevent').map((c) => new ICAL.Event(c));
    };
    const [then, later] = [read('2026-11-20'), read('2026-11-22')];
    const keys = (events: ICAL.Event[]) => events.map((e) => e.uid).filter((uid) => uid.startsWith('start-'));
    expect(new Set(keys(then)).size).toBe(keys(then).length);
    // Two days later the starts still to come have the names they had, less those of the two days.
    const common = keys(later).filter((uid) => keys(then).includes(uid));
    expect(common.length).toBeGreaterThanOrEqual(Math.min(keys(then).length, keys(later).length) - 3);
    const sequence = (events: ICAL.Event[]) => events[0]?.sequence ?? 0;
    expect(sequence(later) - sequence(then)).toBe(2);
  });
});

it('HTTP gives the same shopping and ledger', async () => {
  const server = await serve(folder);
  const get = async (path: string) => (await fetch(`${server.address}api/v1/${path}`)).json();
  const overHttp = [await get('shopping?on=2026-11-20&until=2026-12-31'), await get('ledger?on=2026-11-20')];
  await end(server, 'SIGTERM');
  expect(overHttp).toEqual([asked(['shopping', '--until', '2026-12-31']), asked(['ledger'])]);
});
