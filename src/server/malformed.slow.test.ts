import * as fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { applicationUnderTest, removePage } from './application-under-test.ts';
import { malformedRequests } from './malformed.ts';

afterAll(removePage);

describe('malformed requests from the description', () => {
  it('10000 of them: none is a fault, nothing is written', async () => {
    const { household, request } = await applicationUnderTest();
    const description = await (await request('/api/v1/openapi.json')).json();
    await fc.assert(
      fc.asyncProperty(malformedRequests(description), async ({ path, init }) => {
        const answer = await request(path, init);
        expect(answer.status, `${path} ${await answer.text()}`).toBeLessThan(500);
        expect(household.count).toBe(0);
      }),
      { numRuns: 10000 },
    );
  });
});
