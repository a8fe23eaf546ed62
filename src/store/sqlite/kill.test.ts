import { resolve } from 'node:path';
import { beforeAll, expect, it } from 'vitest';
import { buildRecorder, killCycles } from './kill-cycles.ts';

let recorder = '';
beforeAll(async () => {
  recorder = await buildRecorder(resolve('.cache', 'kill-recorder'));
});

it('kill -9 during a thousand records loses no acknowledged entry', async () => {
  const report = await killCycles(recorder, { cycles: 5, wanted: 1000, atOnce: 3, killAfter: (c) => 150 + 37 * c });
  expect(report.lost).toEqual([]);
  expect(report.acknowledged).toBeGreaterThanOrEqual(1000);
}, 120_000);
