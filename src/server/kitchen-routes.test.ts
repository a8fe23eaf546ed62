import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { type ApplicationUnderTest, applicationUnderTest, removePage } from './application-under-test.ts';

let request: ApplicationUnderTest['request'];
beforeEach(async () => {
  ({ request } = await applicationUnderTest());
  const body = JSON.stringify({
    entries: [
      { kind: 'household', on: '2026-11-01', name: 'Pond' },
      { kind: 'place', on: '2026-11-01', place: 'shelf', temperatureC: 23 },
      { kind: 'started', on: '2026-11-10', culture: 'M1', strain: 'melanogaster', place: 'shelf', founders: 50 },
      { kind: 'stock', on: '2026-11-12', item: 'oat-flour', amount: 400, unit: 'g', pricePerUnit: 0.01 },
    ],
  });
  const headers = { 'content-type': 'application/json' };
  expect((await request('/api/v1/entries', { method: 'POST', body, headers })).status).toBe(201);
});
afterAll(removePage);

const get = async (path: string) => {
  const answer = await request(`/api/v1/${path}`, {});
  return { status: answer.status, body: (await answer.json()) as Record<string, never> };
};
const refusedAt = async (path: string) => {
  const { status, body } = await get(path);
  return [status, ...(body.problems as { where: string }[]).map((p) => p.where)];
};

describe('the kitchen over HTTP', () => {
  it('mixes, with a preservative beside the recipe’s', async () => {
    const { body } = await get(
      'mix?on=2026-11-20&recipe=oat-and-banana&cups=2&preservative=methylparaben&preservativePercent=0.3',
    );
    expect(body).toMatchObject({ cups: 2, doses: [{ preservative: 'methylparaben', verdict: 'high' }] });
    expect(await refusedAt('mix?on=2026-11-20&recipe=soup&cups=2')).toEqual([400, 'recipe']);
  });
  it('adds up costs and yield', async () => {
    const { body } = await get('ledger?on=2026-11-20');
    expect(body).toMatchObject({ hasPrices: true, weeks: [{ week: '2026-11-09', cups: 1 }, { cups: 0 }] });
  });
  it('ends a cup and rescues one', async () => {
    expect((await get('cup-ending?reason=spent')).body).toMatchObject({ reuse: ['cup', 'lid'] });
    expect((await get('cup-ending?reason=spent&isWashable=false')).body).toMatchObject({ reuse: [] });
    expect((await get('moisture?touch=runs&hasLarvae=false&language=de')).body).toMatchObject({ verdict: 'wet' });
    expect(await refusedAt('moisture?touch=sticky')).toEqual([400, 'touch']);
  });
});

describe('the larder and the strains over HTTP', () => {
  it('say what is on hand, which recipes there are, and what a spoon weighs', async () => {
    const { body } = await get('larder?on=2026-11-20&recipe=oat-and-banana');
    expect(body).toMatchObject({ items: [{ item: 'oat-flour', amount: 400, unit: 'g' }], limitedBy: 'oat-flour' });
    const recipes = (await get('recipes?on=2026-11-20')).body as unknown as { recipe: string }[];
    expect(recipes.map(({ recipe }) => recipe)).toContain('oat-and-banana');
    // USDA SR28 NDB 19335: 200 g of sugar a US cup.
    expect((await get('weight?ingredient=sugar&amount=1&measure=us-cup')).body.massG).toBeCloseTo(200, 9);
    expect(await refusedAt('weight?ingredient=sawdust&amount=1&measure=us-cup')).toEqual([400, 'ingredient']);
    expect((await get('mix?on=2026-11-20&recipe=oat-and-banana&batchMassG=1000')).body.mixedMassG).toBe(1000);
  });
  it('put strains side by side and answer for a winged fly, in German too', async () => {
    const { body } = await get('strains?on=2026-11-20');
    expect(body.strains).toMatchObject([{ strain: 'melanogaster', livingCups: 1, place: 'shelf' }]);
    expect((await get('winged?on=2026-11-20&culture=M1&language=de')).body.todo).toContainEqual(
      expect.stringMatching(/^Den Becher wegwerfen/),
    );
    expect(await refusedAt('winged?on=2026-11-20&culture=M9')).toEqual([400, 'cultures']);
    expect((await get('lines?on=2026-11-20&language=de')).body.strains).toMatchObject([
      { advice: { why: expect.stringMatching(/Vielfalt/) } },
    ]);
  });
});

describe('sheets over HTTP', () => {
  it('are HTML documents', async () => {
    for (const query of ['kind=shelf', 'kind=given&culture=M1&temperatureC=24']) {
      const { status, body } = await get(`sheet?on=2026-11-20&${query}`);
      expect(status, query).toBe(200);
      expect(body.html).toMatch(/^<!doctype html>[\s\S]*M1/);
    }
  });
  it('say what is missing', async () => {
    expect(await refusedAt('sheet?on=2026-11-20&kind=given')).toEqual([400, 'culture']);
    expect(await refusedAt('sheet?on=2026-11-20&kind=sitter')).toEqual([400, 'until']);
    expect(await refusedAt('sheet?on=2026-11-20&kind=shelf&place=cellar')).toEqual([400, 'place']);
    expect(await refusedAt('sheet?on=2026-11-20&kind=poster')).toEqual([400, 'query.kind']);
  });
});
