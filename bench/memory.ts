/**
 * Memory: the most that a process of the built program ever held, as the system counts it. FLYLARDER_BENCH_ENTRIES
 * and FLYLARDER_BENCH_CUPS set the sizes of the large logbook and of the large household.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { createWriteStream, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { addDays, day } from '../src/foundation/index.ts';
import { canonicalText, type Entry } from '../src/logbook/index.ts';
import { numberedId } from '../src/store/conformance-entries.ts';
import type { BenchResult, BenchRow } from './bench-result.ts';

const entries = Number(process.env.FLYLARDER_BENCH_ENTRIES ?? 100_000);
const cups = Number(process.env.FLYLARDER_BENCH_CUPS ?? 1000);
const [mostIdle, most] = [150, 1000];
const eventsPerCup = 24;
const program = resolve('bin/flylarder.mjs');
const atExit = "process.on('exit', () => console.error('peak', process.resourceUsage().maxRSS / 1024))";

export async function run(): Promise<BenchResult> {
  const folder = mkdtempSync(join(tmpdir(), 'flylarder-memory-'));
  try {
    const log = join(folder, 'log.jsonl');
    await writeLines(log, logOf(entries));
    const shelf = join(folder, 'shelf.jsonl');
    await writeLines(shelf, shelfOf(cups));
    const rows: BenchRow[] = [
      row('a server at rest, a household without entries', await serving(join(folder, 'empty'), 'health'), mostIdle),
      row(`\`record\` of a file of ${entries} entries`, await recording(log, join(folder, 'large')), most),
      row(`\`export\` of ${entries} entries`, await exporting(join(folder, 'large')), most),
      row(`\`export --csv\` of ${entries} entries`, await exportingTables(folder), most),
      row(`a server of ${entries} entries, its facts told`, await serving(join(folder, 'large'), 'health'), most),
      row(`\`record\` of ${cups} living cups`, await recording(shelf, join(folder, 'shelf')), most),
      row(`a server of ${cups} living cups, its day told`, await serving(join(folder, 'shelf'), 'today'), most),
    ];
    return { title: `Memory, MB at the most (Node ${process.versions.node} itself: ${await bareNode()})`, rows };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function row(what: string, peakMB: number, target: number): BenchRow {
  return { what, figure: peakMB, baseline: `${target} MB allowed`, ratio: peakMB / target, target: '<= 1' };
}

/** A cup is started, harvested and thrown out, again and again. */
function* logOf(count: number): Generator<Entry> {
  for (let n = 0; n < count; n++) {
    const on = addDays(day('2020-01-01'), Math.floor(n / 480));
    const [culture, step] = [`M${Math.floor(n / eventsPerCup)}`, n % eventsPerCup];
    const envelope = { id: numberedId(n), on, recordedAt: `${on}T10:00:00.000Z` as const, by: 'bench', culture };
    if (step === 0) yield { ...envelope, kind: 'started', strain: 'melanogaster', founders: 50 };
    else if (step === eventsPerCup - 1) yield { ...envelope, kind: 'ended', reason: 'spent' };
    else yield { ...envelope, kind: 'harvested', flies: n % 400, purpose: 'feeding' };
  }
}

/** Cups started on each day of the last four weeks. */
function* shelfOf(count: number): Generator<Entry> {
  const today = day(new Date().toISOString().slice(0, 10));
  for (let n = 0; n < count; n++) {
    const on = addDays(today, -(n % 28));
    const strain = n % 3 === 0 ? 'hydei' : 'melanogaster';
    const recordedAt = `${on}T00:00:00.000Z` as const;
    yield { id: numberedId(n), kind: 'started', on, recordedAt, by: 'bench', culture: `M${n}`, strain, founders: 50 };
  }
}

async function writeLines(file: string, all: Iterable<Entry>): Promise<void> {
  const out = createWriteStream(file);
  for (const entry of all) if (!out.write(`${canonicalText(entry)}\n`)) await once(out, 'drain');
  out.end();
  await once(out, 'close');
}

const recording = (file: string, folder: string) => ended(start(['record', file, '--data', folder]));
const exporting = (folder: string) => ended(start(['export', '--data', folder]));
const exportingTables = (folder: string) =>
  ended(start(['export', '--data', join(folder, 'large'), '--csv', join(folder, 'tables')]));
const bareNode = async () => `${Math.round(await ended(spawnNode(['--eval', '0'])))} MB`;

async function serving(folder: string, route: string): Promise<number> {
  const server = start(['serve', '--data', folder, '--port', '0']);
  let said = '';
  server.stdout?.setEncoding('utf8').on('data', (text: string) => (said += text));
  while (!/http:\/\/\S+/.test(said)) await once(server.stdout as NodeJS.ReadableStream, 'data');
  const address = (/http:\/\/\S+/.exec(said) as RegExpExecArray)[0];
  const answer = await fetch(`${address}api/v1/${route}`);
  if (!answer.ok) throw new Error(`${route}: ${answer.status}`);
  await answer.arrayBuffer();
  const peak = ended(server);
  server.kill('SIGTERM');
  return peak;
}

function start(args: string[]): ChildProcess {
  return spawnNode([program, ...args]);
}

function spawnNode(args: string[]): ChildProcess {
  const child = spawn(process.execPath, ['--import', `data:text/javascript,${encodeURIComponent(atExit)}`, ...args], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  child.stdout?.resume();
  return child;
}

/** The peak that the process tells when it ends. */
async function ended(child: ChildProcess): Promise<number> {
  let told = '';
  child.stderr?.setEncoding('utf8').on('data', (text: string) => (told += text));
  const [code] = (await once(child, 'close')) as [number];
  const peak = /peak ([\d.]+)/.exec(told)?.[1];
  if (code !== 0 || peak === undefined) throw new Error(`ended with ${code}: ${told}`);
  return Number(peak);
}
