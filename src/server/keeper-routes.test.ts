import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { type ApplicationUnderTest, applicationUnderTest, removePage } from './application-under-test.ts';

let request: ApplicationUnderTest['request'];
beforeEach(async () => {
  ({ request } = await applicationUnderTest());
});
afterAll(removePage);

const get = async (path: string) => {
  const response = await request(`/api/v1/${path}`);
  return { status: response.status, body: (await response.json()) as Record<string, never> };
};
const keep = (...entries: object[]) =>
  request('/api/v1/entries', {
    method: 'POST',
    body: JSON.stringify({ entries: entries.map((entry) => ({ on: '2026-11-20', ...entry })) }),
    headers: { 'content-type': 'application/json' },
  });
const frogs = { kind: 'group', group: 'frogs', name: 'Frogs', count: 4, fliesPerFeeding: 30, strain: 'melanogaster' };

describe('animals over HTTP', () => {
  it('tell need and the week', async () => {
    await keep(frogs);
    const { body } = await get('animals?weeks=2');
    expect(body).toMatchObject({ days: 14, strains: [{ strain: 'melanogaster' }], groups: [{ group: 'frogs' }] });
  });
  it('set practice beside energy, and refuse extremes with reasons', async () => {
    expect((await get('ration?animal=dart-frog-medium&massG=3')).body).toMatchObject({
      verdict: 'energy asks for more',
    });
    const { status, body } = await get('ration?animal=dart-frog-medium&massG=10000&temperatureC=-5&count=1000000000');
    expect(status).toBe(400);
    expect(body.problems as { where: string }[]).toMatchObject([
      { where: 'massG' },
      { where: 'temperatureC' },
      { where: 'count' },
    ]);
    expect((await get('rations')).body.length).toBeGreaterThan(10);
    const hatches = (await get('hatches')).body as unknown as {
      species: string;
      youngLow: number;
      youngHigh: number;
    }[];
    // As read in keepers' pages (data/hatches.csv): 50 to 200 eggs in an egg case of Mantis religiosa.
    expect(hatches.find(({ species }) => species === 'mantis-religiosa')).toMatchObject({
      youngLow: 50,
      youngHigh: 200,
    });
  });
  it('refuse entries that no keeper can mean, with the reason', async () => {
    const refusals = [
      [{ kind: 'weighed', group: 'frogs', massG: 0 }, 'massG'],
      [{ kind: 'weighed', group: 'frogs', massG: 10_000 }, 'massG'],
      [{ ...frogs, temperatureC: -5 }, 'temperatureC'],
      [{ ...frogs, count: 1e9 }, 'count'],
      [{ kind: 'headcount', group: 'frogs', change: -7, reason: 'died' }, 'change'],
    ] as const;
    await keep(frogs);
    for (const [entry, field] of refusals) {
      const response = await keep(entry);
      expect(response.status, field).toBe(400);
      expect(JSON.stringify(await response.json())).toMatch(new RegExp(`${field}.*expected`));
    }
  });
  it('take weighings, deaths and what flies were dusted with', async () => {
    await keep(frogs, { kind: 'headcount', group: 'frogs', change: -1, reason: 'sold', on: '2026-11-21' });
    await keep({ kind: 'weighed', group: 'frogs', massG: 2.1, animals: 3, on: '2026-11-21' });
    const { body } = await get('animals?weeks=2&on=2026-11-25&language=de');
    const [group] = body.groups as { count: number; weighings: object[] }[];
    expect(group).toMatchObject({ count: 3, weighings: [{ massG: 2.1, animals: 3 }] });
  });
  it('count flies by weight', async () => {
    const { body } = await get('fly-pot?strain=melanogaster&fullMg=30400&emptyMg=30000&scaleStepMg=10');
    expect(body).toMatchObject({ mainDoubt: 'the mean mass of a fly' });
    expect((await get('fly-pot?strain=melanogaster&fullMg=1&emptyMg=2&scaleStepMg=10')).status).toBe(400);
  });
});

describe('lines over HTTP', () => {
  it('show pedigrees and what threatens them', async () => {
    await keep(
      { kind: 'started', culture: 'A1', strain: 'melanogaster', founders: 50 },
      { kind: 'seen', culture: 'A1', on: '2026-11-24', winged: 1 },
    );
    expect((await get('lines')).body).toMatchObject({
      strains: [{ strain: 'melanogaster', cups: [{ culture: 'A1' }] }],
      warnings: [{ kind: 'winged flies', culture: 'A1' }],
    });
  });
  it('say whether two strains may be mixed', async () => {
    await keep(
      { kind: 'strain', strain: 'stubs', base: 'melanogaster', mutation: 'vg' },
      { kind: 'strain', strain: 'bare', base: 'melanogaster', mutation: 'ap' },
    );
    expect((await get('mixing?first=stubs&second=bare')).body).toMatchObject({ verdict: 'fliers' });
    expect((await get('mixing?first=stubs&second=none')).body).toMatchObject({ problems: [{ where: 'second' }] });
  });
  it('say how sure it is that a line is clean', async () => {
    const { body } = await get('clean-line?looks=100,200&founders=50&foundersAre=flightless%20mated');
    expect(body.afterLook as number[]).toHaveLength(2);
    expect((await get('clean-line?looks=x&founders=50')).status).toBe(400);
  });
});
