/** Labels for living cups, set out on a sheet of any size, as a page that prints. */
import { addDays, type Day, failed, ok, type Result } from '../foundation/index.ts';
import type { Facts } from '../logbook/index.ts';
import {
  type LabelContent,
  type LabelSheet,
  type Language,
  labelPages,
  labelPagesHtml,
  labelSheets,
  singleLabel,
} from '../paper/index.ts';
import { type CupLife, cupLives } from './cup-lives.ts';
import { chosenCups } from './kitchen/chosen-cups.ts';
import type { Question } from './question.ts';

export interface LabelsQuestion extends Question {
  /** Keys or labels of cups; all living ones when left out. */
  cultures?: readonly string[];
  /** A common sheet by name, or one label a page as `50x25` in millimetres. */
  sheet?: string;
  language?: Language;
  /** Places of the first sheet that are used already. */
  skip?: number;
  /** What a cup's address begins with, e.g. `http://192.168.1.20:4180`. */
  linkBase?: string;
}

export interface LabelsAnswer {
  on: Day;
  sheet: string;
  pages: number;
  labels: (Omit<LabelContent, 'label'> & { culture: string; label: string })[];
  /** The pages as one printable HTML document. */
  html: string;
}

export const usualLabelSheet = 'a4-70x37-24';
export const usualLinkBase = 'http://localhost:4180';

/** The labels; refused for unknown cups or sheets, and for labels that could not be read at that size. */
export function labels(facts: Facts, question: LabelsQuestion): Result<LabelsAnswer> {
  const sheetName = question.sheet ?? usualLabelSheet;
  const language = question.language ?? 'en';
  const sheet = sheetNamed(sheetName);
  const cups = chosenCups(facts, question.cultures);
  if (!sheet.ok) return sheet;
  if (!cups.ok) return cups;
  const lives = new Map(cupLives(facts, question).map((life) => [life.id, life]));
  const base = (question.linkBase ?? usualLinkBase).replace(/\/+$/, '');
  const contents = cups.value.map(({ culture, label, strain, startedOn }) => ({
    culture,
    label,
    strain: facts.strains.find((s) => s.strain === strain)?.name ?? strain,
    startedOn,
    ...datesOf(lives.get(culture)),
    link: `${base}/#/culture/${encodeURIComponent(culture)}`,
  }));
  const pages = labelPages({
    contents,
    sheet: sheet.value,
    language,
    ...(question.skip === undefined ? {} : { skip: question.skip }),
  });
  if (!pages.ok) return pages;
  const html = labelPagesHtml(pages.value, facts.household.name, language);
  return ok({ on: question.on, sheet: sheetName, pages: pages.value.length, labels: contents, html });
}

function datesOf(life: CupLife | undefined): Pick<LabelContent, 'firstFliesOn' | 'throwOutOn'> {
  if (!life) return { firstFliesOn: null, throwOutOn: null };
  const from = life.from as Day;
  return { firstFliesOn: addDays(from, Math.round(life.fliesAt)), throwOutOn: life.until as Day };
}

function sheetNamed(name: string): Result<LabelSheet> {
  const common = Object.hasOwn(labelSheets, name) ? labelSheets[name] : undefined;
  if (common) return ok(common);
  const size = /^(\d{1,3}(?:\.\d+)?)x(\d{1,3}(?:\.\d+)?)$/.exec(name);
  if (size) return ok(singleLabel(Number(size[1]), Number(size[2])));
  const expected = `a size in mm such as 50x25, or one of ${Object.keys(labelSheets).join(', ')}`;
  return failed({ where: 'sheet', found: `"${name}"`, expected });
}
