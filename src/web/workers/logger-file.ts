/** A logger's file, read piece by piece and shown as the entries that it would become. */
import { loggerImport, loggerPlan, LoggerReader, loggerSampleChars } from '../../app/index.ts';
import { type Day, ok, type Result } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import type { LoggerAsk, LoggerShown } from './questions.ts';

export async function loggerFile({ file, on, given }: LoggerAsk, facts: Facts): Promise<Result<LoggerShown>> {
  const sample = await file.slice(0, loggerSampleChars).text();
  const ask = (place: string | undefined) => loggerPlan(sample, file.name, facts, { ...given, place }, on as Day);
  const asked = ask(given.place);
  // Which place was measured is asked on the page, beside all the rest; until then it is the first.
  const placeIsOpen = !asked.ok && asked.problems[0]?.where === 'place' && given.place === undefined;
  const plan = placeIsOpen ? ask(facts.places[0]?.place) : asked;
  if (!plan.ok) return plan;
  const reader = LoggerReader.of(plan.value.form, file.name, facts.household.timeZone);
  if (!reader.ok) return reader;
  for await (const piece of textOf(file)) reader.value.push(piece);
  const read = reader.value.end();
  if (!read.ok) return read;
  const made = loggerImport(read.value, plan.value.place, facts);
  if (!made.ok) return made;
  const { days, ...report } = read.value;
  const [first, last] = [days[0]?.on ?? on, days.at(-1)?.on ?? on];
  return ok({ ...plan.value, ...made.value, report, placeIsOpen, days: days.length, firstDay: first, lastDay: last });
}

async function* textOf(file: File): AsyncGenerator<string> {
  // The decoder leaves out a byte order mark by itself, and joins letters that a piece cut in two.
  const decoder = new TextDecoder();
  const reader = file.stream().getReader();
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    yield decoder.decode(part.value, { stream: true });
  }
  yield decoder.decode();
}
