import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import { type ApplicationUnderTest, applicationUnderTest, removePage } from './application-under-test.ts';

let server: ApplicationUnderTest;
beforeAll(async () => {
  server = await applicationUnderTest();
});
afterAll(removePage);

/** What learns from every cup's log, or tunes a plan, would keep everyone waiting for as long as it takes. */
it.each([
  'today',
  'forecast',
  'plan',
  'plan/changes?since=2026-11-24',
  'plan/bounds',
  'compare',
  'compare/rules',
  'learned',
  'hindcast',
  'animals',
  'lines',
  'strains',
  'temperature',
  'temperature/what-if?place=shelf&byC=1',
  'ledger',
  'labels',
  'sheet?kind=shelf',
  'sheet?kind=month',
  'shopping',
  'calendar.ics',
])('/api/v1/%s is reckoned where answers are reckoned, not where requests are served', async (path) => {
  const asked = vi.spyOn(server.household, 'reckon').mockRejectedValue(new Error('asked'));
  vi.spyOn(console, 'error').mockImplementation(() => {});
  expect((await server.request(`/api/v1/${path}`)).status).toBe(500);
  expect(asked).toHaveBeenCalledOnce();
  vi.restoreAllMocks();
});
