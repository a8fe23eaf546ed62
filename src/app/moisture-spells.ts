/** The days on which a cup was too wet or too dry, from what the keeper saw of it. */
import type { MoistureSpell } from '../biology/index.ts';
import { dayNumber } from '../foundation/index.ts';
import type { CultureFacts } from '../logbook/index.ts';

/** A state that nobody looked at again is taken to have been put right within so many days. */
const rescuedWithinDays = 4;

/** Spells by age in days: from a look that found it wet or dry until the next look at its moisture. */
export function moistureSpells(culture: Pick<CultureFacts, 'startedOn' | 'seen'>): MoistureSpell[] {
  const start = dayNumber(culture.startedOn);
  const looks = culture.seen.flatMap((look) =>
    look.moisture === null ? [] : [{ ageDays: dayNumber(look.on) - start, moisture: look.moisture }],
  );
  return looks.flatMap(({ ageDays, moisture }, i) => {
    if (moisture === 'good') return [];
    const next = looks[i + 1]?.ageDays ?? ageDays + rescuedWithinDays;
    return [{ fromAgeDays: Math.max(0, ageDays), untilAgeDays: Math.max(ageDays, next - 1), state: moisture }];
  });
}
