/** One page for someone who is given or sold a culture: what it is, its dates, feeding, the next cup, cautions. */
import { type Day, ok, type Result } from '../../foundation/index.ts';
import type { Language } from '../text/catalogue.ts';
import { texts } from '../text/texts.ts';
import { cell, type Sheet } from './sheet.ts';

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
  /** Where the calendar file with these dates is; null = no QR code. */
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
      ...(link === null ? [] : [{ kind: 'qr' as const, link, text: words.calendar }]),
    ],
  });
}
