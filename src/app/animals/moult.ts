/** Days near a moult, on which a soft animal is fed nothing and loose flies are taken out. */
import { type Day, dayFromNumber, dayNumber } from '../../foundation/index.ts';
import { kindOf, moults } from './animal-kinds.ts';
import type { RationNow } from './feeding-now.ts';

/**
 * Days without food before and after a moult: mantises and spiders refuse it 1 to 7 days before and about a
 * day after (values from memory); within that the shorter end, since hunger harms young ones too.
 */
const around = { before: 2, after: 1 };

export interface MoultDays {
  from: Day;
  until: Day;
  /** True when today is one of them. */
  isNear: boolean;
}

/** Days on which the next moult may fall, with those around it; null for kinds that do not moult or have no date. */
export function nearMoult({ written, stages }: Pick<RationNow, 'written' | 'stages'>, on: Day): MoultDays | null {
  const row = kindOf(written?.animal ?? null);
  const next = stages[0];
  if (!written || written.count === 0 || !row || !moults(row) || !next) return null;
  const from = dayFromNumber(next.begins.earliest - around.before);
  const until = dayFromNumber(next.begins.latest + around.after);
  return { from, until, isNear: from <= on && dayNumber(on) <= dayNumber(until) };
}
