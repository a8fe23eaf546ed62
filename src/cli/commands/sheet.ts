/** Printed sheets: for a sitter, a month, the shelf, or whoever gets a cup. */
import { given as givenAway, month, plan, type Question, sheetHtml, shelf, sitter } from '../../app/index.ts';
import { addDays, failed, type Result, nearestName } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import type { CommandInput } from '../command.ts';
import { writeDocument } from '../document.ts';
import { given } from '../given-options.ts';
import { householdCommand } from '../household-command.ts';

type Sheet = Parameters<typeof sheetHtml>[0];
type SheetMaker = (facts: Facts, question: Question, input: CommandInput) => Result<Sheet>;

const usualRoomC = 22;
const usualAbsenceDays = 7;

const sheetMakers: Record<string, SheetMaker> = {
  sitter: (facts, question, { options }) => {
    const { until = addDays(question.on, usualAbsenceDays - 1), language, contact } = options;
    return sitter(facts, jobsOf(facts, question), { from: question.on, until, ...given({ language, contact }) });
  },
  month: (facts, question, { words, options }) => {
    const asked = { month: words[1] ?? question.on.slice(0, 7), ...given({ language: options.language }) };
    return month(facts, jobsOf(facts, question), asked);
  },
  shelf: (facts, question, { words, options }) =>
    shelf(facts, { ...question, ...given({ place: words[1], language: options.language }) }),
  given: (facts, _, { words, options }) => {
    const culture = words[1];
    if (culture === undefined) return failed({ where: 'sheet given', found: 'no cup', expected: 'a cup, such as M12' });
    const { temperature: temperatureC = usualRoomC, language } = options;
    return givenAway(facts, { culture, temperatureC, ...given({ language }) });
  },
};

export const command = householdCommand({
  usage: 'flylarder sheet (sitter | month [YYYY-MM] | shelf [PLACE] | given CUP) [OPTIONS] > sheet.html',
  about: `A sheet that prints. sitter: who is fed what from which cup, from --on to --until.
month: its jobs. shelf: the living cups with their dates. given: a page that goes
with a cup to a new keeper, for a room of --temperature.`,
  options: ['until', 'contact', 'temperature', 'language', 'out'],
  mostWords: 2,
  run: async (facts, question, input) => {
    const kind = input.words[0] ?? '';
    const make = Object.hasOwn(sheetMakers, kind) ? sheetMakers[kind] : undefined;
    if (!make) return failed(unknownSheet(kind));
    const sheet = make(facts, question, input);
    if (!sheet.ok) return sheet;
    const html = sheetHtml(sheet.value);
    return html.ok ? writeDocument(html.value, 'The sheet', input.options) : html;
  },
});

function unknownSheet(kind: string) {
  const kinds = Object.keys(sheetMakers);
  const expected = nearestName(kind, kinds) ?? `one of ${kinds.join(', ')}`;
  return { where: 'sheet', found: kind === '' ? 'no kind of sheet' : `"${kind}"`, expected };
}

/** The jobs are the plan's whatever it promises: one scenario is enough. */
function jobsOf(facts: Facts, question: Question) {
  return plan(facts, { ...question, scenarios: 1 }).jobs;
}
