/** One page for someone who is given or sold a culture: what it is, its dates, feeding, the next cup, cautions. */
import { type Day, ok, type Result } from '../../foundation/index.ts';
import { eventCode } from '../calendar/event-code.ts';
import type { Language } from '../text/catalogue.ts';
import { texts } from '../text/texts.ts';
import { type Block, cell, type Sheet } from './sheet.ts';

export interface GivenRequest {
  language: Language;
  strain: string;
  label: string;
  /** Of the room that it goes to. */
  temperatureC: number;
  startedOn: Day;
  firstFlies: { from: Day; until: Day };
  mostFlies: { from: Day; until: Day };
  founders: { from: Day; until: Day };
  throwOutOn: Day;
  /** Where a calendar file with these dates is; null = the codes hold the dates themselves, one each. */
  calendarLink: string | null;
}

/** The sheet. The dates are forecasts for that room's temperature, as spans. */
export function givenSheet(request: GivenRequest): Result<Sheet> {
  const t = texts(request.language);
  const words = t.given;
  const span = (s: { from: Day; until: Day }) => t.span(s.from, s.until);
  const dates: [string, string][] = [
    [words.started, t.dayLong(request.startedOn)],
    [words.firstFlies, span(request.firstFlies)],
    [words.best, span(request.mostFlies)],
    [words.founders, span(request.founders)],
    [words.throwOut, t.dayLong(request.throwOutOn)],
  ];
  const cautions = (
    ['never-release', 'freeze-first', 'mould', 'treated-material', 'allergy', 'vet', 'local-rules'] as const
  ).map((key) => t.cautions[key]);
  const link = request.calendarLink;
  return ok({
    language: request.language,
    title: words.title({ strain: request.strain }),
    subtitle: `${t.sheets.cup} ${request.label}`,
    orientation: 'portrait',
    blocks: [
      { kind: 'text', text: words.what({ strain: request.strain }) },
      { kind: 'heading', text: words.datesTitle({ temperatureC: Math.round(request.temperatureC * 10) / 10 }) },
      { kind: 'table', head: [], rows: dates.map(([what, when]) => [cell(what), [{ text: when, isStrong: true }]]) },
      { kind: 'heading', text: words.feedTitle },
      { kind: 'list', items: words.feed },
      { kind: 'heading', text: words.nextTitle },
      { kind: 'list', items: words.next },
      { kind: 'warnings', title: words.cautionsTitle, items: cautions },
      link === null ? datesInCodes(request) : { kind: 'qr', link, text: words.calendar },
    ],
  });
}

/** A code holds a few hundred bytes: the names of strain and cup may be long. */
const mostTitle = 70;

/** The three dates that matter as calendar files in QR codes: whoever gets the cup need not reach this household. */
function datesInCodes({ label, strain, startedOn, firstFlies, founders, throwOutOn, language }: GivenRequest): Block {
  const { given: words } = texts(language);
  const code = (key: string, what: string, { from, until }: { from: Day; until: Day }) => ({
    content: eventCode({
      key: `${key}-${label.replaceAll(/[^A-Za-z0-9-]/g, '.')}-${startedOn}`,
      from,
      until,
      title: `${what}: ${strain} ${label}`.slice(0, mostTitle),
      madeOn: startedOn,
    }),
    caption: what,
  });
  return {
    kind: 'codes',
    text: words.calendarCodes,
    codes: [
      code('first', words.firstFlies, firstFlies),
      code('founders', words.founders, founders),
      code('out', words.throwOut, { from: throwOutOn, until: throwOutOn }),
    ],
  };
}
