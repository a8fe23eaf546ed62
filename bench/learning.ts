/**
 * Learning: the processor time to learn a household of 150 cups, anew and after one new note; forecasts of the
 * coming week scored against the books and the habit of "same as the last cup"; and the coverage of its
 * bands. Worlds are simulated, with known truth; FLYLARDER_HOUSEHOLDS sets how many are scored.
 */
import { type CupEvidence, learn, ordinaryPrior, TableMemory } from '../src/learning/index.ts';
import { scoreHouseholds, type ScoreTable } from '../tests/simulation/learning-scores.ts';
import { ordinaryWorld, simulateWorld, type WorldOptions } from '../tests/simulation/learning-world.ts';
import type { BenchResult, BenchRow } from './bench-result.ts';

const scoredHouseholds = Number(process.env.FLYLARDER_HOUSEHOLDS ?? 40);
/** Kept times of JAGS 4.3.1 for the four cups of tests/reference/learning-jags, seconds (110,000 sweeps, 4 chains). */
const jagsSeconds = 69;

export async function run(): Promise<BenchResult> {
  return {
    title: `Learning: 150 cups; forecasts of ${scoredHouseholds} simulated households a world`,
    rows: [...timeRows(), ...worlds.flatMap(([name, options]) => scoreRows(name, options))],
  };
}

const worlds: [string, Partial<WorldOptions>][] = [
  ['as the model says', {}],
  ['one entry in ten wrong', { wrongShare: 0.1 }],
  ['counts rounded to tens', { writeCount: (flies) => Math.round(flies / 10) * 10 }],
  ['looks on Sundays only', { lookEvery: 7 }],
];

function timeRows(): BenchRow[] {
  const year = simulateWorld({ ...ordinaryWorld, cups: 150, cupsPerSession: 3, lookEvery: 3 }, 5);
  const memory = new TableMemory();
  const learnYear = () => learn({ seed: 1, draws: 1000, prior: ordinaryPrior, strains: [year.evidence] }, memory);
  const anew = milliseconds(learnYear);
  learnYear();
  const after = Math.min(
    ...[40, 60, 90].map((count) => {
      addCount(year.evidence.cups, count);
      return milliseconds(learnYear);
    }),
  );
  const small = milliseconds(() => {
    const world = simulateWorld({ ...ordinaryWorld, cups: 4 }, 2);
    learn({ seed: 1, draws: 1000, prior: ordinaryPrior, strains: [world.evidence] });
  });
  return [
    { what: '150 cups after one new note, 1,000 draws', ...timed(after, anew, 'anew'), target: atMost(after, 300) },
    { what: '150 cups from nothing', ...timed(anew, after, 'one note'), target: atMost(anew, 10_000) },
    { what: '4 cups from nothing', ...timed(small, 1000 * jagsSeconds, 'JAGS, kept') },
  ];
}

/** Processor time, so that a busy machine does not count. */
function milliseconds(work: () => void): number {
  const start = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}

function timed(ms: number, other: number, name: string): Pick<BenchRow, 'figure' | 'baseline' | 'ratio'> {
  return {
    figure: `${ms.toFixed(0)} ms`,
    baseline: `${other.toFixed(0)} ms (${name})`,
    ratio: (ms / other).toPrecision(2),
  };
}

function atMost(ms: number, most: number): string {
  return `at most ${most} ms${ms <= most ? '' : ' (MISSED)'}`;
}

/** A new note in the oldest living cup. */
function addCount(cups: CupEvidence[], count: number): void {
  const cup = cups.find((c) => c.ended === null);
  cup?.looks.push({ ageDays: cup.ageDays, present: ['adults'], absent: [], amount: null, count });
}

function scoreRows(name: string, options: Partial<WorldOptions>): BenchRow[] {
  const table = scoreHouseholds(scoredHouseholds, { ...ordinaryWorld, ...options }, 70_000);
  return [
    scoreRow(name, 'CRPS, flies a week', table, 'crps'),
    scoreRow(name, 'log score', table, 'logScore'),
    {
      what: `${name}: weeks in the 90 % band`,
      figure: table.learned.inside90.toFixed(3),
      baseline: `${table.books.inside90.toFixed(3)} books, ${table.lastCup.inside90.toFixed(3)} last cup`,
      ratio: (table.learned.inside90 / 0.9).toFixed(2),
      target: '0.85 to 0.95',
    },
  ];
}

function scoreRow(name: string, score: string, table: ScoreTable, key: 'crps' | 'logScore'): BenchRow {
  const { learned, books, lastCup } = table;
  const digits = key === 'crps' ? 1 : 2;
  const best = Math.min(books[key], lastCup[key]);
  return {
    what: `${name}: ${score}`,
    figure: learned[key].toFixed(digits),
    baseline: `${books[key].toFixed(digits)} books, ${lastCup[key].toFixed(digits)} last cup`,
    ratio: key === 'crps' ? (learned[key] / best).toFixed(2) : `${(learned[key] - best).toFixed(2)} (difference)`,
    target: 'below both',
  };
}
