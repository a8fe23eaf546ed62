/**
 * Costs and yield over time, week by week: cups begun, medium and money spent, flies taken and flies
 * thrown out with cups; the figures behind the picture.
 */
import { addDays, type Day, type DayNumber, dayNumber, weekdayIndex } from '../foundation/index.ts';

export interface LedgerCup {
  on: Day;
  mediumMassG: number;
  cost: number;
  /** Flies taken from it, by day. */
  harvests: readonly { on: Day; flies: number }[];
  /** When it ended, with the flies that were still in it as far as known. */
  ended: { on: Day; fliesLeft: number } | null;
}

export interface LedgerWeek {
  /** Its Monday. */
  week: Day;
  cups: number;
  mediumMassG: number;
  cost: number;
  fliesTaken: number;
  fliesWasted: number;
  /** Cups that ended in this week, and what they gave in their whole lives; null when none ended or no fly was counted. */
  cupsEnded: number;
  fliesPerEndedCup: number | null;
  mediumGPerFly: number | null;
}

export interface Ledger {
  weeks: LedgerWeek[];
  /** Over cups that have ended; null when none has. */
  fliesPerEndedCup: number | null;
  mediumGPerFly: number | null;
  costPer100Flies: number | null;
}

/** The ledger of the weeks from the first cup to `until`, without gaps. */
export function ledgerOf(cups: readonly LedgerCup[], until: Day): Ledger {
  const ended = cups.filter((c) => c.ended !== null);
  const flies = ended.reduce((sum, c) => sum + fliesOf(c), 0);
  const ratio = (total: number) => (flies > 0 ? total / flies : null);
  const costPerFly = ratio(ended.reduce((sum, c) => sum + c.cost, 0));
  return {
    weeks: weeksOf(cups, until),
    fliesPerEndedCup: ended.length > 0 ? flies / ended.length : null,
    mediumGPerFly: ratio(ended.reduce((sum, c) => sum + c.mediumMassG, 0)),
    costPer100Flies: costPerFly === null ? null : costPerFly * 100,
  };
}

function weeksOf(cups: readonly LedgerCup[], until: Day): LedgerWeek[] {
  const first = cups.map((c) => c.on).sort()[0];
  if (first === undefined || first > until) return [];
  const weeks = new Map<Day, LedgerWeek>();
  for (let monday = mondayOf(first); monday <= until; monday = addDays(monday, 7)) weeks.set(monday, emptyWeek(monday));
  const add = (on: Day, what: (week: LedgerWeek) => void) => {
    const week = weeks.get(mondayOf(on));
    if (week && on <= until) what(week);
  };
  for (const cup of cups) {
    add(cup.on, (w) => {
      w.cups += 1;
      w.mediumMassG += cup.mediumMassG;
      w.cost += cup.cost;
    });
    for (const { on, flies } of cup.harvests) add(on, (w) => (w.fliesTaken += flies));
    if (cup.ended) add(cup.ended.on, (w) => (w.fliesWasted += cup.ended?.fliesLeft ?? 0));
  }
  for (const week of weeks.values()) addEnded(week, cups, until);
  return [...weeks.values()];
}

function emptyWeek(week: Day): LedgerWeek {
  return {
    week,
    cups: 0,
    mediumMassG: 0,
    cost: 0,
    fliesTaken: 0,
    fliesWasted: 0,
    cupsEnded: 0,
    fliesPerEndedCup: null,
    mediumGPerFly: null,
  };
}

function addEnded(week: LedgerWeek, cups: readonly LedgerCup[], until: Day): void {
  const ended = cups.filter((c) => c.ended && c.ended.on <= until && mondayOf(c.ended.on) === week.week);
  const flies = ended.reduce((sum, c) => sum + fliesOf(c), 0);
  week.cupsEnded = ended.length;
  if (ended.length > 0) week.fliesPerEndedCup = flies / ended.length;
  if (flies > 0) week.mediumGPerFly = ended.reduce((sum, c) => sum + c.mediumMassG, 0) / flies;
}

function fliesOf(cup: LedgerCup): number {
  return cup.harvests.reduce((sum, h) => sum + h.flies, 0);
}

function mondayOf(day: Day): Day {
  const n: DayNumber = dayNumber(day);
  return addDays(day, -weekdayIndex(n));
}
