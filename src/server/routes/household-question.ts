/** From a request's query to the question that app/ answers, and the facts that it is answered from. */
import type { Question } from '../../app/index.ts';
import type { Facts } from '../../logbook/index.ts';
import type { ApiContext } from '../api-context.ts';

export interface Asked<Query> {
  facts: Facts;
  question: Query & Question;
}

/** A day before today is answered as it was known to have happened by then. */
export function askedOf<Query extends Partial<Question>>(
  { household, shell }: Pick<ApiContext, 'household' | 'shell'>,
  query: Query,
): Asked<Query> {
  const now = shell.todayIn(household.facts().household.timeZone);
  const question: Query & Question = { ...query, on: query.on ?? now, seed: query.seed ?? 1 };
  return { question, facts: household.facts(question.on < now ? question.on : undefined) };
}

/** The answer, found or computed once for each question and state of the logbook. */
export function answered<Query extends Partial<Question>, Answer>(
  context: ApiContext,
  name: string,
  query: Query,
  ask: (facts: Facts, question: Query & Question) => Answer,
): Promise<Answer> {
  const { facts, question } = askedOf(context, query);
  return context.household.answer(questionKey(name, question), () => ask(facts, question));
}

/** The same for the same question, in whatever order it was written. */
export function questionKey(name: string, question: object): string {
  const fields = Object.entries(question).filter(([, value]) => value !== undefined);
  return `${name} ${JSON.stringify(Object.fromEntries(fields.sort(([a], [b]) => (a < b ? -1 : 1))))}`;
}
