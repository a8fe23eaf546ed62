/**
 * Reading a logger's file of a million rows, beside csv-parse cutting the same text into cells and doing
 * nothing with them; and ten sensors that send every second for a year: what is kept of it, and what it costs the answers.
 */
import { performance } from 'node:perf_hooks';
import { parse } from 'csv-parse/browser/esm/sync';
import { forecast, temperature } from '../src/app/index.ts';
import { guessLoggerForm, LoggerReader, SensorIntake, ZoneClock } from '../src/climate/index.ts';
import { addDays } from '../src/foundation/index.ts';
import type { EntryDraft, Facts } from '../src/logbook/index.ts';
import { benchDay, factsOf } from './seeded-households.ts';
import type { BenchResult, BenchRow } from './bench-result.ts';

const rows = 1_000_000;
const pieceChars = 65_536;
const sensors = 10;
const daySeconds = 86_400;
/** A simulated year is counted from these days: every day is like the other. */
const simulatedDays = 3;
const zone = 'Europe/Berlin';

export async function run(): Promise<BenchResult> {
  const text = loggerText();
  return { title: 'Temperature: files and floods, one core', rows: [importRow(text), ...floodRows(), ...answerRows()] };
}

/** A reading a minute for almost two years, as `25.11.2026 14:00;21,53;45`. */
function loggerText(): string {
  const lines = ['Zeit;Temperatur (°C);Feuchte (%)'];
  const start = Date.UTC(2024, 0, 1);
  for (let i = 0; i < rows; i += 1) {
    const at = new Date(start + 60_000 * i).toISOString();
    const celsius = (21 + 3 * Math.sin(i / 229) + ((i * 7919) % 100) / 200).toFixed(2).replace('.', ',');
    lines.push(`${at.slice(8, 10)}.${at.slice(5, 7)}.${at.slice(0, 4)} ${at.slice(11, 16)};${celsius};45`);
  }
  return lines.join('\n');
}

function importRow(text: string): BenchRow {
  const ours: number[] = [];
  const theirs: number[] = [];
  // In turns, so that a busy machine slows both.
  for (let turn = 0; turn < 3; turn += 1) {
    theirs.push(secondsOf(() => parse(text, { delimiter: ';' })));
    ours.push(secondsOf(() => importFile(text)));
  }
  const [mine, plain] = [Math.min(...ours), Math.min(...theirs)];
  return {
    what: `a logger's file of ${rows} rows: times, zone, cleaning, days`,
    figure: `${mine.toFixed(2)} s, ${Math.round(rows / mine)} rows/s`,
    baseline: `csv-parse 7, cells only: ${plain.toFixed(2)} s, ${Math.round(rows / plain)} rows/s`,
    ratio: mine / plain,
    target: 'seconds',
  };
}

function importFile(text: string): void {
  const guess = guessLoggerForm(text.slice(0, 4 * pieceChars), 'file', zone);
  const reader = guess.ok ? LoggerReader.of(guess.value.form, 'file', zone) : guess;
  if (!reader.ok) throw new Error('importFile: the file was not understood');
  for (let from = 0; from < text.length; from += pieceChars) reader.value.push(text.slice(from, from + pieceChars));
  const report = reader.value.end();
  if (!report.ok || report.value.days.length < 690) throw new Error('importFile: days are missing');
}

function secondsOf(act: () => void): number {
  const startedAt = performance.now();
  act();
  return (performance.now() - startedAt) / 1000;
}

function floodRows(): BenchRow[] {
  const clock = ZoneClock.of(zone);
  if (!clock.ok) throw new Error('floodRows: this system does not know the zone');
  const intake = new SensorIntake(clock.value);
  const start = Date.UTC(2026, 0, 1);
  let entries = 0;
  let bytes = 0;
  const seconds = secondsOf(() => {
    for (let s = 0; s < simulatedDays * daySeconds; s += 1) {
      const atMs = start + 1000 * s;
      for (let sensor = 0; sensor < sensors; sensor += 1) {
        intake.take({ place: `place ${sensor}`, celsius: 21 + ((s + sensor) % 60) / 100, atMs }, atMs);
      }
      if (s % 60 !== 0) continue;
      const due = intake.due(atMs);
      entries += due.length;
      for (const span of due) bytes += entryBytes(span);
    }
  });
  const readings = sensors * simulatedDays * daySeconds;
  const year = 365 / simulatedDays;
  return [
    {
      what: `${sensors} sensors at 1 Hz, a year: entries kept`,
      figure: `${Math.round(entries * year)} entries, ${Math.round((bytes * year) / 1e6)} MB`,
      baseline: `every reading an entry: ${Math.round(readings * year)}`,
      ratio: entries / readings,
    },
    {
      what: 'readings taken, one core',
      figure: `${Math.round(readings / seconds)} a second`,
      baseline: `${sensors} sensors at 1 Hz send ${sensors}`,
      ratio: readings / seconds / sensors,
    },
  ];
}

/** As an entry stands in the logbook, with its id, moment and author. */
function entryBytes(span: object): number {
  const envelope = { id: '019ab000-0000-7000-8000-000000000000', kind: 'temperature', by: 'sensors' };
  return JSON.stringify({ ...envelope, recordedAt: '2026-01-01T00:00:00.000Z', ...span }).length;
}

const yearDays = 365;
const quarters = 4;

/** The answers of a household with a year of what is kept of ten sensors, beside the same one without a thermometer. */
function answerRows(): BenchRow[] {
  const [measured, plain] = [sensorHousehold(true), sensorHousehold(false)];
  const row = (name: string, answer: (facts: Facts) => unknown): BenchRow => {
    const [ours, theirs] = [best(() => answer(measured)), best(() => answer(plain))];
    return {
      what: `${name}: ${sensors * yearDays * quarters} entries of sensors`,
      figure: `${(1000 * ours).toFixed(0)} ms`,
      baseline: `the same household unmeasured: ${(1000 * theirs).toFixed(0)} ms`,
      ratio: ours / theirs,
    };
  };
  const question = { on: benchDay, seed: 1 };
  return [
    row('forecast', (facts) => forecast(facts, question)),
    row('temperature', (facts) => temperature(facts, question)),
  ];
}

/** In turns with nothing else; the quickest of three. */
function best(act: () => unknown): number {
  return Math.min(...Array.from({ length: 3 }, () => secondsOf(() => void act())));
}

function sensorHousehold(isMeasured: boolean): Facts {
  const places = Array.from({ length: sensors }, (_, i) => ({ kind: 'place', place: `p${i}`, temperatureC: 22 }));
  const group = { kind: 'group', group: 'frogs', count: 6, fliesPerFeeding: 15, strain: 'melanogaster' };
  const cups = Array.from({ length: 20 }, (_, i) => ({
    kind: 'started',
    culture: `M${i}`,
    strain: 'melanogaster',
    place: `p${i % sensors}`,
    founders: 50,
    on: addDays(benchDay, -2 * i - 1),
  }));
  const readings = isMeasured ? Array.from({ length: sensors }, (_, i) => readingsOf(`p${i}`)).flat() : [];
  const began = { on: addDays(benchDay, -yearDays) };
  const drafts = [...places, group, ...cups, ...readings].map((draft) => ({ ...began, ...draft }));
  return factsOf(drafts as EntryDraft[]);
}

function readingsOf(place: string): object[] {
  return Array.from({ length: yearDays * quarters }, (_, i) => {
    const meanC = 22 + 2 * Math.sin(i / 60) + Math.sin((i % quarters) * 1.6);
    return {
      kind: 'temperature',
      place,
      on: addDays(benchDay, Math.floor(i / quarters) - yearDays),
      meanC,
      minC: meanC - 1,
      maxC: meanC + 1,
    };
  });
}
