/**
 * The heavy part of a facility: everything that a household's logbook teaches, and its day, forecast and
 * plan, worked out before anyone asks. The jobs of the calendar feed and of printed sheets are the plan's.
 */
import { setImmediate } from 'node:timers/promises';
import { Temporal } from 'temporal-polyfill';
import { animals, forecast, learned, lines, plan, temperature, today, type Question } from '../../../app/index.ts';
import type { Day } from '../../../foundation/index.ts';
import type { Facts } from '../../../logbook/index.ts';
import type { LiveHousehold } from '../../live-household.ts';
import { askedOf, questionKey } from '../../routes/household-question.ts';
import type { Shell } from '../../shell.ts';

interface Asked {
  name: string;
  query?: Partial<Question>;
  ask(facts: Facts, question: Question): unknown;
}

/** Each as the routes ask it when nothing else is said. */
const asked: Asked[] = [
  { name: 'today', ask: today },
  { name: 'forecast', ask: forecast },
  { name: 'plan', ask: plan },
  { name: 'plan', query: { scenarios: 1 }, ask: plan },
  { name: 'learned', ask: learned },
  { name: 'animals', ask: animals },
  { name: 'lines', ask: lines },
  { name: 'temperature', ask: temperature },
];

/** Answers by their question, all of one state of the logbook, which must not grow meanwhile. */
export async function householdAnswers(household: LiveHousehold, shell: Shell): Promise<Map<string, unknown>> {
  const answers = new Map<string, unknown>();
  for (const { name, query = {}, ask } of asked) {
    const { facts, question } = askedOf({ household, shell }, query);
    answers.set(questionKey(name, question), ask(facts, question));
    // Whoever watches this process gets an answer between two of them.
    await setImmediate();
  }
  return answers;
}

/** The moment at which the day ends in a time zone; in UTC when the zone is not known. */
export function endOfDay(on: Day, timeZone: string): Date {
  const next = Temporal.PlainDate.from(on).add({ days: 1 });
  const midnight = (zone: string) => new Date(next.toZonedDateTime(zone).epochMilliseconds);
  try {
    return midnight(timeZone);
  } catch {
    return midnight('UTC');
  }
}
