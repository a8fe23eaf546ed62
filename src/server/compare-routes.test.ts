import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type CompareAnswer, compareAnswer, planChangesAnswer, planGapAnswer } from '../app/index.ts';
import { type ApplicationUnderTest, applicationUnderTest, removePage } from './application-under-test.ts';

let request: ApplicationUnderTest['request'];
beforeAll(async () => {
  ({ request } = await applicationUnderTest());
  const started = (on: string, culture: string) => ({
    kind: 'started',
    on,
    culture,
    strain: 'melanogaster',
    founders: 50,
  });
  const entries = [
    { kind: 'household', on: '2026-11-01', name: 'Pond', workWeekdays: ['wed'] },
    { kind: 'group', on: '2026-11-01', group: 'newts', count: 2, fliesPerFeeding: 10, strain: 'melanogaster' },
    started('2026-11-04', 'M1'),
    started('2026-11-11', 'M2'),
  ];
  const headers = { 'content-type': 'application/json' };
  expect(
    (await request('/api/v1/entries', { method: 'POST', body: JSON.stringify({ entries }), headers })).status,
  ).toBe(201);
});
afterAll(removePage);

const get = async (path: string) => {
  const answer = await request(`/api/v1/${path}`, {});
  return { status: answer.status, body: (await answer.json()) as Record<string, unknown> };
};

describe('plans side by side over HTTP', () => {
  it('are those that were asked for, beside the household as it is', async () => {
    const { status, body } = await get('compare?on=2026-11-25&weeks=6&scenarios=50&what=animals:2');
    expect(status).toBe(200);
    const { columns }: CompareAnswer = compareAnswer.parse(body);
    expect(columns.map(({ change }) => change)).toEqual([null, { change: 'animals', factor: 2 }]);
  });
  it('are refused, with what can be asked, where the list or a cup is not known', async () => {
    const unreadable = await get('compare?what=sunshine:3');
    expect(unreadable).toMatchObject({
      status: 400,
      body: { problems: [{ where: 'what-if', found: '"sunshine:3"' }] },
    });
    const nobody = await get('compare?on=2026-11-25&weeks=6&what=lost:Z9');
    expect(nobody).toMatchObject({
      status: 400,
      body: { problems: [{ where: 'lost', expected: 'a living cup: M1, M2' }] },
    });
  });
});

it('what changed since an earlier plan is told over HTTP, from the log as it stood then', async () => {
  const { status, body } = await get('plan/changes?on=2026-11-25&weeks=6&since=2026-11-10');
  expect(status).toBe(200);
  expect(planChangesAnswer.parse(body).reasons).toContain('New cups: M2.');
});

describe('how near the best the plan is, over HTTP', () => {
  it('is told step by step, each with what it adds to the one before', async () => {
    const { status, body } = await get('plan/bounds?on=2026-11-25&weeks=2&scenarios=50&language=de');
    expect(status).toBe(200);
    const { weeks, scenarios, countedCups, foresightCups, steps, sentences } = planGapAnswer.parse(body);
    expect([weeks, scenarios]).toEqual([2, 50]);
    expect(foresightCups.mean).toBeLessThanOrEqual(countedCups.mean);
    expect(steps.map(({ step }) => step)).toEqual(['parts', 'founders', 'rules', 'wholeCups', 'search', 'uncertainty']);
    expect(steps.reduce((sum, { adds }) => sum + adds, 0)).toBeCloseTo(countedCups.mean, 9);
    expect(sentences[0]).toMatch(/^In 2 Wochen/);
  });

  it.each([
    ['weeks=200', 'query.weeks', '"200"', 'a whole number from 1 to 104'],
    ['on=2026-02-30', 'query.on', '"2026-02-30"', /^a real calendar day/],
    ['scenarios=1e9', 'query.scenarios', '"1e9"', 'a whole number from 50 to 100000'],
    ['degrees=K', 'query.degrees', '"K"', 'C or F'],
    ['language=fr', 'query.language', '"fr"', 'en or de'],
    ['hours=3', 'query', 'unknown: hours', 'only what the description names'],
  ])('is refused for %s, with what would be right', async (asked, where, found, expected) => {
    const wanted = typeof expected === 'string' ? expected : expect.stringMatching(expected);
    expect(await get(`plan/bounds?${asked}`)).toEqual({
      status: 400,
      body: { problems: [{ where, found, expected: wanted }] },
    });
  });
});
