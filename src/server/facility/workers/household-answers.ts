/**
 * The heavy part of a facility: everything that a household's logbook teaches, and its day, forecast and
 * plan, worked out before anyone asks. The jobs of the calendar feed and of printed sheets are the plan's.
 */
import { Temporal } from 'temporal-polyfill';
import type { Question } from '../../../app/index.ts';
import type { Day } from '../../../foundation/index.ts';
import type { LiveHousehold } from '../../live-household.ts';
import type { QuestionName } from '../../reckoning/questions.ts';
import { answered, questionKey, questionOf } from '../../routes/household-question.ts';
import type { Shell } from '../../shell.ts';

interface Asked {
  name: QuestionName;
  query?: Partial<Question>;
}

/** Each as the routes ask it when nothing else is said. */
const asked: Asked[] = [
  { name: 'today' },
  { name: 'forecast' },
  { name: 'plan' },
  { name: 'plan', query: { scenarios: 1 } },
  { name: 'learned' },
  { name: 'animals' },
  { name: 'lines' },
  { name: 'temperature' },
];

/** Answers by their question, all of one state of the logbook, which must not grow meanwhile. */
export async function householdAnswers(household: LiveHousehold, shell: Shell): Promise<Map<string, unknown>> {
  const answers = new Map<string, unknown>();
  for (const { name, query = {} } of asked) {
    const { question } = questionOf({ household, shell }, query);
    answers.set(questionKey(name, question), await answered({ household, shell }, name, query));
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
