/** A cup that strays: what was seen, how unlikely it was, why it may be, and what it does to the supply. */
import { bandOf } from '../foundation/index.ts';
import { likelyCauses, type PaceSign } from './causes.ts';
import type { CupPrior } from './cell-draw.ts';
import type { TableContext } from './cup-table.ts';
import type { CupEvidence, OffCourse } from './evidence.ts';
import type { KeeperSetting } from './keeper-settings.ts';
import { meanAndSd } from './summary.ts';
import { mostSurprising } from './surprise.ts';
import { emergedBetween, runningTotal } from './warped-emergence.ts';

/** Notes rarer than this are pointed at. */
const pointedAtBelow = 0.025;
const supplyDays = 14;

/** Draws of log pace and log yield. */
export interface PaceAndYield {
  logPace: Float64Array;
  logYield: Float64Array;
}

/**
 * Null while every note is as likely as 2.5 % or more (allowing for their number).
 * @param believed draws of this cup; `ordinary` draws of a cup like it of which nothing was seen.
 */
export function offCourse(
  cup: CupEvidence,
  context: TableContext,
  setting: KeeperSetting,
  expected: CupPrior,
  draws: Compared,
): OffCourse | null {
  const surprise = mostSurprising(cup, context, setting, expected);
  if (surprise === null || surprise.chance >= pointedAtBelow) return null;
  const pace = paceSign(cup, draws);
  return {
    ...surprise,
    causes: likelyCauses(cup, surprise.direction, pace),
    ...supplyEffect(cup, draws),
    daysLate: daysLate(cup, draws),
    asIfWarmerByC: pace.asIfWarmerByC,
  };
}

interface Compared {
  believed: PaceAndYield;
  ordinary: PaceAndYield;
}

/** Flies of the coming fortnight against an ordinary cup's, scenario by scenario. */
function supplyEffect(cup: CupEvidence, { believed, ordinary }: Compared) {
  const total = runningTotal(cup.emergedByAge);
  const flies = ({ logPace, logYield }: PaceAndYield, s: number) =>
    Math.exp(logYield[s] as number) *
    emergedBetween(total, cup.ageDays, cup.ageDays + supplyDays, logPace[s] as number);
  const change = believed.logPace.map((_, s) => flies(believed, s) - flies(ordinary, s));
  const { p05, p50, p95 } = bandOf(change);
  const suppliedFlies = { p05: Math.round(p05), p50: Math.round(p50), p95: Math.round(p95) };
  return { suppliedFliesIn14Days: Math.round(meanAndSd(change).mean), suppliedFlies };
}

/** Days between its first flies and an ordinary cup's, to a tenth. */
function daysLate(cup: CupEvidence, { believed, ordinary }: Compared): OffCourse['daysLate'] {
  const firstFlies = (logPace: number) => cup.firstSeenAge.adults * Math.exp(-logPace);
  const { p05, p50, p95 } = bandOf(
    believed.logPace.map((pace, s) => firstFlies(pace) - firstFlies(ordinary.logPace[s] as number)),
  );
  const tenth = (days: number) => Math.round(10 * days) / 10;
  return { p05: tenth(p05), p50: tenth(p50), p95: tenth(p95) };
}

/** What the pace says of warmth: its difference from an ordinary cup's over the change a degree makes. */
function paceSign(cup: CupEvidence, { believed, ordinary }: Compared): PaceSign {
  const change = believed.logPace.map((pace, s) => pace - (ordinary.logPace[s] as number));
  const perC = cup.signs?.logPacePerC ?? null;
  return {
    asIfWarmerByC: perC === null || perC <= 0 ? null : Math.round((10 * meanAndSd(change).mean) / perC) / 10,
    chanceSlower: change.filter((d) => d < 0).length / change.length,
  };
}
