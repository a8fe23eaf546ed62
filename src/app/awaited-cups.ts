/** Cups that were ordered from others and are on their way: the planner counts on them, once. */
import { type DayNumber, dayNumber } from '../foundation/index.ts';
import type { Facts, PurchaseFact } from '../logbook/index.ts';
import type { AwaitedCups } from '../planner/index.ts';

/** A parcel that is later than this is no longer counted on; the keeper is asked what became of it. */
const patienceDays = 4;

/** Purchases that are still to come, soonest first. */
export function openPurchases(facts: Facts, today: DayNumber): PurchaseFact[] {
  return facts.purchases
    .filter((p) => dayNumber(p.on) <= today && dayNumber(p.arrives) + patienceDays >= today)
    .sort((a, b) => dayNumber(a.arrives) - dayNumber(b.arrives));
}

/** Purchases that are too late to be counted on and that nobody has written down as come or cancelled. */
export function unansweredPurchases(facts: Facts, today: DayNumber): PurchaseFact[] {
  return facts.purchases
    .filter((p) => dayNumber(p.arrives) + patienceDays < today)
    .sort((a, b) => dayNumber(a.arrives) - dayNumber(b.arrives));
}

/** The strain's awaited cups in days from today; a parcel that is late is expected tomorrow. */
export function awaitedCups(facts: Facts, strain: string, today: DayNumber): AwaitedCups[] {
  return openPurchases(facts, today)
    .filter((p) => p.strain === strain)
    .map(({ stage, cups, arrives }) => {
      const inDays = dayNumber(arrives) - today;
      return { kind: stage, cups, arrivalDay: inDays < 0 ? 1 : inDays };
    });
}
