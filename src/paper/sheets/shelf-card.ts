/** The card beside a shelf: every cup with its dates, youngest first, the order in which to handle them. */
import { type Day, failed, ok, type Result } from '../../foundation/index.ts';
import type { Language } from '../text/catalogue.ts';
import { texts } from '../text/texts.ts';
import { cell, type Sheet } from './sheet.ts';

export interface ShelfCup {
  label: string;
  strain: string;
  startedOn: Day;
  firstFliesOn: Day | null;
  founders: { from: Day; until: Day } | null;
  throwOutOn: Day | null;
}

/** The card; refused when the shelf is empty. */
export function shelfCard(request: {
  language: Language;
  place: string;
  on: Day;
  cups: readonly ShelfCup[];
}): Result<Sheet> {
  const { language, place, on, cups } = request;
  if (cups.length === 0) return failed({ where: place, found: 'no cup', expected: 'at least one living cup' });
  const t = texts(language);
  const w = t.sheets;
  const dayOrNone = (d: Day | null) => (d === null ? '–' : t.dayShort(d));
  const youngFirst = [...cups].sort((a, b) => b.startedOn.localeCompare(a.startedOn) || a.label.localeCompare(b.label));
  return ok({
    language,
    title: place,
    subtitle: `${w.shelfTitle} · ${w.made({ day: t.dayLong(on) })}`,
    orientation: 'portrait',
    blocks: [
      {
        kind: 'table',
        head: [w.cup, w.strain, w.started, w.firstFlies, w.foundersBetween, w.throwOut],
        rows: youngFirst.map((c) => [
          [{ text: c.label, isStrong: true }],
          cell(c.strain),
          cell(t.dayShort(c.startedOn)),
          cell(dayOrNone(c.firstFliesOn)),
          cell(c.founders === null ? '–' : t.span(c.founders.from, c.founders.until)),
          [{ text: dayOrNone(c.throwOutOn), isStrong: true }],
        ]),
      },
      { kind: 'warnings', title: w.cautions, items: [t.cautions.mites, t.cautions['treated-material']] },
    ],
  });
}
