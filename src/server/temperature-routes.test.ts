import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { type ApplicationUnderTest, applicationUnderTest, removePage } from './application-under-test.ts';

let request: ApplicationUnderTest['request'];
const post = (path: string, body: unknown) =>
  request(`/api/v1/${path}`, {
    method: 'POST',
    body: JSON.stringify(body),
    headers: { 'content-type': 'application/json' },
  });
beforeEach(async () => {
  ({ request } = await applicationUnderTest());
  const entries = [
    { kind: 'place', on: '2026-11-01', place: 'shelf', temperatureC: 23 },
    { kind: 'place', on: '2026-11-01', place: 'cellar', temperatureC: 17 },
    { kind: 'started', on: '2026-11-20', culture: 'M1', strain: 'melanogaster', place: 'shelf', founders: 50 },
  ];
  expect((await post('entries', { entries })).status).toBe(201);
});
afterAll(removePage);

const get = async (path: string) => {
  const answer = await request(`/api/v1/${path}`, {});
  return { status: answer.status, body: (await answer.json()) as Record<string, never> };
};
const text = `when,in,out\n${Array.from({ length: 48 }, (_, h) => `2026-11-${23 + Math.floor(h / 24)}T${String(h % 24).padStart(2, '0')}:00,21.5,8`).join('\n')}`;

describe('temperature over HTTP', () => {
  it('shows a logger’s file, writes it on demand, and then knows it', async () => {
    const shown = await (await post('temperature/import', { text, place: 'shelf' })).json();
    expect(shown).toMatchObject({
      written: 0,
      alreadyThere: 0,
      doubts: [{ about: 'temperatureColumn', choices: ['in', 'out'] }],
      report: { lines: 48, readings: 48, days: [{ on: '2026-11-23', meanC: 21.5 }, {}] },
    });
    const asked = { text, place: 'shelf', temperature: 'out', write: true };
    expect(await (await post('temperature/import', asked)).json()).toMatchObject({ written: 3 });
    expect(await (await post('temperature/import', asked)).json()).toMatchObject({
      written: 0,
      alreadyThere: 2,
      known: true,
      doubts: [],
    });
    const { body } = await get('temperature?on=2026-11-24');
    expect(body.places).toMatchObject([{ place: 'shelf', readings: 2, latest: { meanC: 8 } }, { readings: 0 }]);
  });
  it('refuses what is none, and writes nothing', async () => {
    const refused = async (body: object) => {
      const answer = await post('temperature/import', body);
      return [answer.status, ((await answer.json()) as { problems: { where: string }[] }).problems[0]?.where];
    };
    expect(await refused({ text: 'warm\nwarm', place: 'shelf', write: true })).toEqual([400, 'file, line 2']);
    expect(await refused({ text, place: 'attic', write: true })).toEqual([400, 'place']);
    expect(await refused({ text, write: true })).toEqual([400, 'place']);
    expect(await refused({ text, place: 'shelf', timeZone: 'Mars/Base' })).toEqual([400, 'timeZone of the file']);
    expect(await refused({ text, place: 'shelf', sheet: 1 })).toEqual([400, 'json']);
    expect((await get('health')).body.entries).toBe(3);
  });
  it('answers what if', async () => {
    const on = 'on=2026-11-24';
    const warmer = await get(`temperature/what-if?${on}&place=shelf&byC=2`);
    expect(warmer.body).toMatchObject({
      cultures: [{ id: 'M1' }],
      cautions: [expect.stringMatching(/thermostat/), expect.any(String)],
    });
    expect((await get(`temperature/what-if?${on}&culture=M1&to=cellar`)).status).toBe(200);
    expect((await get(`temperature/what-if?${on}&culture=M1`)).status).toBe(400);
    expect((await get(`temperature/what-if?${on}&place=attic&byC=2`)).status).toBe(400);
  });
  it('takes no reading of a sensor where there is no folder', async () => {
    expect((await post('sensors/readings', { temperatureC: 22 })).status).toBe(401);
  });
});
