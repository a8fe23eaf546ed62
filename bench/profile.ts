/**
 * Where the time of the slowest answer goes: the demo's day, forecast and plan one after another in a process that
 * has kept nothing, each under the profiler, and the slowest taken apart. Times are processor time.
 */
import { Session } from 'node:inspector/promises';
import type { Profiler } from 'node:inspector';
import { demoLogbook, forecast, plan, today } from '../src/app/index.ts';
import type { BenchResult, BenchRow } from './bench-result.ts';
import { benchDay, factsOf } from './seeded-households.ts';

/** What the answers are made of, by the function that does it and all that it calls. */
const parts: [string, string][] = [
  ['tunePrepared', 'the policy is tuned in simulated worlds'],
  ['withTodaysPurchase', "today's purchase is searched for in simulated worlds"],
  ['verifyPrepared', 'the plan is judged in simulated worlds'],
  ['forecastSupply', 'the forecast is read off simulated worlds'],
  ['cupTable', "each cup's notes are weighed on a grid"],
  ['learnStrain', 'cups and household are learned together, weighing included'],
  ['cupHistories', 'the life of each cup at its temperatures'],
  ['prepareHousehold', 'curves of cups to come are laid out'],
  ['cupsUnderCertainty', 'the plan without uncertainty'],
  ['feedingNow', 'rations of the animals'],
];
const listed = 8;
const targetS = 2;

interface Timed {
  what: string;
  seconds: number;
  profile: Profiler.Profile;
}

export async function run(): Promise<BenchResult> {
  const facts = factsOf(demoLogbook(benchDay));
  const question = { on: benchDay, seed: 1 };
  const timed = [
    await profiled("the day's jobs", () => today(facts, question)),
    await profiled('the forecast after them', () => forecast(facts, question)),
    await profiled('the plan after them', () => plan(facts, question)),
  ];
  const slowest = timed.reduce((a, b) => (a.seconds >= b.seconds ? a : b));
  const shares = partRows(slowest);
  return {
    title: `Profile of the slowest answer of the demo from nothing kept: ${slowest.what}; what limits it: ${shares[0]?.what.replace('part: ', '')}`,
    rows: [...timed.map(answerRow), ...shares, ...functionRows(slowest)],
  };
}

async function profiled(what: string, work: () => unknown): Promise<Timed> {
  const session = new Session();
  session.connect();
  await session.post('Profiler.enable');
  await session.post('Profiler.start');
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  const { profile } = await session.post('Profiler.stop');
  session.disconnect();
  return { what, seconds: (user + system) / 1e6, profile };
}

function answerRow({ what, seconds }: Timed): BenchRow {
  return {
    what,
    figure: `${seconds.toFixed(2)} s`,
    baseline: `target ${targetS} s`,
    ratio: seconds / targetS,
    target: '<= 1',
  };
}

/** Shares with all that is called from there; parts within parts count in both. */
function partRows({ profile, seconds }: Timed): BenchRow[] {
  const micros = selfTimes(profile);
  const children = new Map(profile.nodes.map(({ id, children: ids = [] }) => [id, ids]));
  const nodes = new Map(profile.nodes.map((node) => [node.id, node]));
  const total = [...micros.values()].reduce((sum, x) => sum + x, 0);
  const sums = new Map<string, number>();
  const visit = (id: number, above: ReadonlySet<string>): number => {
    const name = nameOf(nodes.get(id) as Profiler.ProfileNode);
    const within = new Set([...above, name]);
    const all = (children.get(id) ?? []).reduce((sum, child) => sum + visit(child, within), micros.get(id) ?? 0);
    if (!above.has(name)) sums.set(name, (sums.get(name) ?? 0) + all);
    return all;
  };
  visit((profile.nodes[0] as Profiler.ProfileNode).id, new Set());
  return parts
    .map(([name, what]) => shareRow(`part: ${what}`, (sums.get(name) ?? 0) / total, seconds))
    .filter(({ ratio }) => Number(ratio) >= 0.01)
    .sort((a, b) => Number(b.ratio) - Number(a.ratio));
}

/** The functions in which most time is spent themselves: what a faster answer would have to spare. */
function functionRows({ profile, seconds }: Timed): BenchRow[] {
  const micros = selfTimes(profile);
  const sums = new Map<string, number>();
  let total = 0;
  for (const node of profile.nodes) {
    const own = micros.get(node.id) ?? 0;
    sums.set(nameOf(node), (sums.get(nameOf(node)) ?? 0) + own);
    total += own;
  }
  return [...sums]
    .sort(([, a], [, b]) => b - a)
    .slice(0, listed)
    .map(([name, own]) => shareRow(`in the function ${name} itself`, own / total, seconds));
}

function shareRow(what: string, share: number, seconds: number): BenchRow {
  return {
    what,
    figure: `${(share * seconds).toFixed(2)} s`,
    baseline: `in all ${seconds.toFixed(2)} s`,
    ratio: share,
  };
}

function selfTimes({ samples = [], timeDeltas = [] }: Profiler.Profile): Map<number, number> {
  const micros = new Map<number, number>();
  samples.forEach((id, i) => micros.set(id, (micros.get(id) ?? 0) + (timeDeltas[i] ?? 0)));
  return micros;
}

/** The bundler tells functions of one name apart by `$1`. */
function nameOf({ callFrame }: Profiler.ProfileNode): string {
  return callFrame.functionName.replace(/\$\d+$/, '') || '(module)';
}
