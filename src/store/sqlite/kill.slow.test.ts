import { resolve } from 'node:path';
import { expect, it } from 'vitest';
import { randomStream } from '../../foundation/index.ts';
import { buildRecorder, killCycles } from './kill-cycles.ts';

const cycles = Number(process.env.FLYLARDER_KILL_CYCLES ?? 1000);
const seed = 20261125;

it(`kill -9, ${cycles} times at moments drawn with seed ${seed}, loses no acknowledged entry`, async () => {
  const recorder = await buildRecorder(resolve('.cache', 'kill-recorder-slow'));
  const { below } = randomStream(seed, 'kill');
  const report = await killCycles(recorder, { cycles, wanted: cycles, atOnce: 4, killAfter: () => 1 + below(60) });
  console.log(`${report.cycles} kills, ${report.acknowledged} entries acknowledged, ${report.lost.length} lost`);
  expect(report.lost).toEqual([]);
}, 3_600_000);
