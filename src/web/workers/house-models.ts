/** The questions of the kitchen, the paper and the strains, answered with the same use cases as at every other door. */
import {
  calendar,
  cleanLine,
  cross,
  cupEnding,
  given,
  kitchenCautions,
  kitchenWords,
  labels,
  larder,
  ledger,
  lines,
  mix,
  mixing,
  moisture,
  month,
  plan,
  recipeBook,
  sheetHtml,
  shelf,
  shopping,
  sitter,
  strainBook,
  threat,
  weighed,
  writtenRecipe,
} from '../../app/index.ts';
import { type Day, ok, type Result } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import type { HouseQuestions, Paper, PaperAsk } from './house-questions.ts';
import type { Logbook } from './models.ts';
import type { Asked } from './asked.ts';

type HouseAnswers = {
  [Q in keyof HouseQuestions]: (ask: HouseQuestions[Q]['ask'], logbook: Logbook) => HouseQuestions[Q]['answer'];
};

export const houseAnswers: HouseAnswers = {
  larder: (ask, { facts }) => larder(facts, dated(ask)),
  kitchenBook: ({ language }, { facts }) => ({
    recipes: recipeBook(facts),
    ingredients: kitchenWords(),
    cautions: kitchenCautions(language),
  }),
  mix: (ask, { facts }) => mix(facts, dated(ask)),
  weighed: (ask) => weighed(ask),
  recipe: ({ recipe, name, lines: measured }) => {
    const written = writtenRecipe(recipe, name, measured);
    if (!written.ok) return written;
    const { ingredients, waterMl } = written.value;
    return ok({ kind: 'recipe', recipe, name, waterMl, ingredients: ingredients.map((line) => ({ ...line })) });
  },
  shopping: (ask, { facts }) => shopping(facts, jobsOf(facts, ask), { ...dated(ask), until: ask.until as Day }),
  ledger: (ask, { facts }) => ledger(facts, dated(ask)),
  cupEnding: (ask) => cupEnding(ask),
  moisture: (ask) => moisture(ask),
  paper: (ask, { facts }) => paperOf(ask, facts),
  calendarFile: ({ at, ...ask }, { facts }) =>
    calendar(facts, jobsOf(facts, ask), { ...dated(ask), ...(at !== null && { at: timeOf(at) }) }),
  strainBook: (ask, { facts }) => strainBook(facts, dated(ask)),
  lines: (ask, { facts }) => lines(facts, dated(ask)),
  mixing: (ask, { facts }) => mixing(facts, ask),
  threat: (ask, { facts }) => threat(facts, dated(ask)),
  cleanLine: (ask) => cleanLine(ask),
  cross: (ask) => cross(ask),
};

function dated<Ask extends { on: string }>(ask: Ask): Omit<Ask, 'on'> & { on: Day } {
  return { ...ask, on: ask.on as Day };
}

/** A job of an hour at most, at `07:30`. */
function timeOf(at: string): { hour: number; minute: number; takesMinutes: number } {
  const [hour = 0, minute = 0] = at.split(':').map(Number);
  return { hour, minute, takesMinutes: 30 };
}

/** The plan's jobs, whatever it promises: one scenario is enough. Worked out once for a logbook and a day. */
function jobsOf(facts: Facts, { on, seed, language = 'en' }: Asked) {
  if (planned?.facts !== facts || planned.on !== on || planned.language !== language) {
    planned = { facts, on, language, jobs: plan(facts, { on: on as Day, seed, language, scenarios: 1 }).jobs };
  }
  return planned.jobs;
}
let planned: { facts: Facts; on: string; language: string; jobs: ReturnType<typeof plan>['jobs'] } | null = null;

function paperOf(ask: PaperAsk, facts: Facts): Result<Paper> {
  if (ask.kind === 'labels') return labels(facts, dated(ask));
  const sheet = sheetOf(ask, facts);
  if (!sheet.ok) return sheet;
  const html = sheetHtml(sheet.value);
  return html.ok ? ok({ html: html.value }) : html;
}

function sheetOf(ask: Exclude<PaperAsk, { kind: 'labels' }>, facts: Facts) {
  if (ask.kind === 'shelf') return shelf(facts, dated(ask));
  if (ask.kind === 'month') return month(facts, jobsOf(facts, ask), ask);
  if (ask.kind === 'given') return given(facts, ask);
  const { from, until, contact, language } = ask;
  const question = { from: from as Day, until: until as Day, language, ...(contact !== '' && { contact }) };
  return sitter(facts, jobsOf(facts, ask), question);
}
