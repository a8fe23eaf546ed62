/**
 * The sitter's sheet for an absence: how to feed in four pictures, each day what to feed whom from which
 * cup with a box to tick, what may go wrong and what then. For a person who never saw a fly.
 */
import { type Day, daysBetween, failed, ok, type Result } from '../../foundation/index.ts';
import type { Language, SitterWords } from '../text/catalogue.ts';
import { texts } from '../text/texts.ts';
import { feedingPictures } from './pictures.ts';
import { type Cell, cell, type Sheet } from './sheet.ts';

export interface SitterDay {
  on: Day;
  feedings: readonly { group: string; flies: number; fromCups: readonly string[] }[];
  /** Labels of cups to look at that day. */
  look: readonly string[];
}

export interface SitterRequest {
  language: Language;
  household: string;
  days: readonly SitterDay[];
  /** Whom to call, as the keeper wrote it; null when not given. */
  contact: string | null;
}

/** The sheet; refused when there is no day, or days are not in order. */
export function sitterSheet(request: SitterRequest): Result<Sheet> {
  const { language, days, household } = request;
  const first = days[0];
  const last = days.at(-1);
  if (!first || !last) return failed({ where: 'days', found: 'none', expected: 'at least one day of absence' });
  const jump = days.findIndex((d, i) => i > 0 && daysBetween((days[i - 1] as SitterDay).on, d.on) <= 0);
  if (jump >= 0) {
    return failed({ where: 'days', found: `${days[jump]?.on} out of order`, expected: 'days in order, each once' });
  }
  const t = texts(language);
  const words = t.sitter;
  const contact = request.contact === null ? '______________________' : request.contact;
  return ok({
    language,
    title: words.title,
    subtitle: `${household} · ${t.span(first.on, last.on)} · ${words.contact}: ${contact}`,
    orientation: 'portrait',
    blocks: [
      { kind: 'heading', text: words.howTitle },
      {
        kind: 'pictures',
        pictures: words.how.map((text, i) => ({ svg: feedingPictures[i] as string, text: `${i + 1}. ${text}` })),
      },
      { kind: 'heading', text: words.daysTitle },
      {
        kind: 'table',
        head: [words.day, words.feed, words.look],
        rows: days.map((d) => dayRow(d, words, t.dayWithWeekday)),
      },
      ...(days.some((d) => d.look.length > 0) ? [{ kind: 'text' as const, text: words.lookHow }] : []),
      { kind: 'heading', text: words.wrongTitle },
      {
        kind: 'table',
        head: [],
        rows: words.wrong.map(([what, then]) => [[{ text: what, isStrong: true }], cell(then)]),
      },
      { kind: 'warnings', title: t.sheets.cautions, items: [words.leave, t.cautions['wash-hands'], t.cautions.vet] },
    ],
  });
}

function dayRow(day: SitterDay, words: SitterWords, dayText: (d: Day) => string): Cell[] {
  const feedings = day.feedings.map(({ group, flies, fromCups }) => ({
    text: `${words.feeding({ group, flies })}${fromCups.length > 0 ? `, ${words.fromCup} ${fromCups.join(', ')}` : ''}`,
    hasBox: true,
  }));
  const looks = day.look.map((text) => ({ text, hasBox: true }));
  return [[{ text: dayText(day.on), isStrong: true }], feedings.length > 0 ? feedings : cell(words.nothing), looks];
}
