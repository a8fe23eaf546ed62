/**
 * A temperature file for one culture: CSV with a day or a moment and degrees Celsius on each line, oldest
 * first. Logger files of every make are read elsewhere; this is the plain form.
 */
import { Temporal } from 'temporal-polyfill';
import { failed, ok, type Problem, type Result } from '../foundation/index.ts';

interface Reading {
  line: number;
  /** Hours since the first midnight. */
  hour: number;
  temperatureC: number;
}

/** Hourly temperatures from the first midnight of the file; between readings the value moves in a line. */
export function hourlyFromFile(text: string, file: string): Result<Float64Array> {
  const lines = text.split(/\r?\n/);
  const readings: Reading[] = [];
  let first: Temporal.PlainDateTime | null = null;
  for (const [i, content] of lines.entries()) {
    if (content.trim() === '' || (readings.length === 0 && i === 0 && !/^\s*\d/.test(content))) continue;
    const read = readLine(content, `${file}:${i + 1}`);
    if (!read.ok) return read;
    first ??= read.value.at.with({ hour: 0, minute: 0, second: 0 });
    const hour = first.until(read.value.at).total('hours');
    const before = readings.at(-1);
    if (before && hour <= before.hour) return failed(backward(`${file}:${i + 1}`, content, before.line));
    readings.push({ line: i + 1, hour, temperatureC: read.value.temperatureC });
  }
  if (readings.length === 0) {
    return failed({
      where: file,
      found: 'no reading',
      expected: 'lines such as 2026-11-25,22.5 or 2026-11-25T14:00,22.5',
    });
  }
  return ok(hourlyBetween(readings));
}

function readLine(content: string, where: string): Result<{ at: Temporal.PlainDateTime; temperatureC: number }> {
  const [time = '', degrees = ''] = content.split(/[;,\t]/).map((cell) => cell.trim());
  const temperatureC = degrees === '' ? Number.NaN : Number(degrees);
  if (!Number.isFinite(temperatureC)) {
    return failed({
      where,
      found: `"${degrees.slice(0, 40)}" as temperature`,
      expected: 'degrees Celsius such as 22.5',
    });
  }
  try {
    return ok({ at: Temporal.PlainDateTime.from(time, { overflow: 'reject' }), temperatureC });
  } catch {
    return failed({
      where,
      found: `"${time.slice(0, 40)}" as time`,
      expected: 'a day or a moment such as 2026-11-25T14:00',
    });
  }
}

function backward(where: string, content: string, line: number): Problem {
  const time = content.split(/[;,\t]/)[0] ?? '';
  return { where, found: `${time.trim()}, not later than line ${line}`, expected: 'readings in order, oldest first' };
}

function hourlyBetween(readings: Reading[]): Float64Array {
  const last = readings.at(-1) as Reading;
  const hours = 24 * (Math.floor(last.hour / 24) + 1);
  let at = 0;
  return Float64Array.from({ length: hours }, (_, hour) => {
    while (at + 1 < readings.length && (readings[at + 1] as Reading).hour <= hour) at++;
    const here = readings[at] as Reading;
    const next = readings[at + 1];
    if (!next || hour <= here.hour) return here.temperatureC;
    return here.temperatureC + ((hour - here.hour) / (next.hour - here.hour)) * (next.temperatureC - here.temperatureC);
  });
}
