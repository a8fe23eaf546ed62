import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { type ApplicationUnderTest, applicationUnderTest, removePage } from './application-under-test.ts';

let under: ApplicationUnderTest;
beforeEach(async () => {
  under = await applicationUnderTest();
});
afterAll(removePage);

const text = [
  'Cup no.;Species;Made;First flies;Thrown out;Room',
  '1;D. melanogaster;03.09.2026;15.09.2026;04.10.2026;loft',
  '2;D. hydei;10.09.2026;;;loft',
  '',
].join('\n');

async function post(path: string, body: object) {
  const headers = { 'content-type': 'application/json' };
  const answer = await under.request(`/api/v1/${path}`, { method: 'POST', body: JSON.stringify(body), headers });
  return { status: answer.status, body: await answer.json() };
}
const get = async (path: string) => (await under.request(`/api/v1/${path}`)).json();
const cups = async () =>
  ((await get('facts')) as { cultures: { culture: string; on: string }[] }).cultures.map((c) => [c.culture, c.on]);

describe("a keeper's own spreadsheet over HTTP", () => {
  it('is shown, written, listed and taken back as one act', async () => {
    const shown = await post('imports/preview', { file: 'cups.csv', text });
    expect(shown.status).toBe(200);
    expect(shown.body.columns[2]).toEqual({ heading: 'Made', field: 'startedOn', first: '03.09.2026' });
    expect(shown.body).toMatchObject({ dateOrder: 'dmy', problems: [] });
    expect(shown.body.entries).toContainEqual(
      expect.objectContaining({ line: 3, on: '2026-09-10', kind: 'started', sentence: expect.stringMatching(/hydei/) }),
    );
    expect(under.household.count).toBe(0);

    const written = await post('imports', { file: 'cups.csv', text });
    expect(written.status).toBe(201);
    expect(written.body.added).toBe(shown.body.entries.length);
    expect(await cups()).toEqual([
      ['1', '2026-09-03'],
      ['2', '2026-09-10'],
    ]);
    const { name, added } = written.body;
    expect(await get('imports')).toEqual([{ name, entries: added, amended: 0 }]);

    expect(await post('imports/undo', { name })).toEqual({ status: 201, body: { name, added } });
    expect(await cups()).toEqual([]);
    expect(await get('imports')).toEqual([{ name, entries: added, amended: added }]);
    const again = await post('imports/undo', { name });
    expect(again).toMatchObject({ status: 400, body: { problems: [{ where: 'name' }] } });
  });

  it('takes columns as the keeper says', async () => {
    const fields = ['culture', null, 'endedOn', null, 'startedOn', null];
    const swapped = text.replace('03.09.2026;15', '04.10.2026;15').replace(';04.10.2026;loft', ';03.09.2026;loft');
    const shown = await post('imports/preview', { file: 'a.csv', text: swapped, fields, strain: 'hydei' });
    expect(shown.body.columns.map(({ field }: { field: string }) => field)).toEqual(fields);
    expect(shown.body.entries[0]).toMatchObject({ on: '2026-09-03', kind: 'started' });
    expect(await post('imports/preview', { file: 'a.csv', text, fields: ['culture'] })).toMatchObject({
      status: 400,
      body: { problems: [{ where: 'fields', found: '1 of them' }] },
    });
  });

  it('is written whole or not at all, with the line that is wrong', async () => {
    const spoilt = text.replace('10.09.2026', '31.09.2026');
    const refused = await post('imports', { file: 'cups.csv', text: spoilt });
    expect(refused.status).toBe(400);
    expect(refused.body.problems[0].where).toMatch(/line 3/);
    expect(under.household.count).toBe(0);
    await post('imports', { file: 'cups.csv', text });
    const before = under.household.count;
    const twice = await post('imports', { file: 'cups.csv', text });
    expect(twice.status).toBe(400);
    expect(twice.body.problems[0].found).toMatch(/already/);
    expect(under.household.count).toBe(before);
  });
});
