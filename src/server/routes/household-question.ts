/** From a request's query to the question that app/ answers, and the facts that it is answered from. */
import type { Question } from '../../app/index.ts';
import type { Day } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import type { ApiContext } from '../api-context.ts';
import type { AnswerOf, Asked, QuestionName, QuestionOf } from '../reckoning/questions.ts';

interface DatedQuestion<Query> {
  question: Query & Question;
  /** Set for a day before today, which is answered as it was known to have happened by then. */
  until?: Day;
}

export interface AskedFacts<Query> {
  facts: Facts;
  question: Query & Question;
}

type Asker = Pick<ApiContext, 'household' | 'shell'>;

export function questionOf<Query extends Partial<Question>>(
  { household, shell }: Asker,
  query: Query,
): DatedQuestion<Query> {
  const now = shell.todayIn(household.facts().household.timeZone);
  const question: Query & Question = { ...query, on: query.on ?? now, seed: query.seed ?? 1 };
  return { question, ...(question.on < now && { until: question.on }) };
}

/** For what is answered at once, in the thread that serves requests. */
export function askedOf<Query extends Partial<Question>>(asker: Asker, query: Query): AskedFacts<Query> {
  const { question, until } = questionOf(asker, query);
  return { question, facts: asker.household.facts(until) };
}

/** The answer of the models, found or reckoned once for each question and state of the logbook. */
export async function answered<Name extends QuestionName>(
  asker: Asker,
  name: Name,
  query: Omit<QuestionOf<Name>, keyof Question> & Partial<Question>,
): Promise<AnswerOf<Name>> {
  const { question, until } = questionOf(asker, query);
  const asked = { name, question, ...(until !== undefined && { until }) } as unknown as Asked;
  const { household } = asker;
  const answer = await household.answer(questionKey(name, question), () => household.reckon(asked));
  return answer as AnswerOf<Name>;
}

/** The same for the same question, in whatever order it was written. */
export function questionKey(name: string, question: object): string {
  const fields = Object.entries(question).filter(([, value]) => value !== undefined);
  return `${name} ${JSON.stringify(Object.fromEntries(fields.sort(([a], [b]) => (a < b ? -1 : 1))))}`;
}
