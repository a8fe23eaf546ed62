/** When home-grown supply can begin, strain by strain, and until when purchases may bridge. */
import type { PreparedHousehold, PreparedStrain } from '../forecast/prepared-household.ts';
import { meanOf } from '../forecast/strain-world.ts';
import type { ExistingCup } from '../problem.ts';

export interface StartUp {
  /** First session at which founders can be had, or null when none within the horizon. */
  firstSessionDay: number | null;
  /** First day on which flies of cups started at home from now on could emerge. */
  homeGrownFromDay: number | null;
  /** Purchases may fill gaps before this day: home-grown cups have given a quarter of their flies. */
  bridgeUntilDay: number;
  /** The kind of cup bought for founders: young when it is past quarantine at its best. */
  seedKind: 'young' | 'producing';
}

/** Days after the first home-grown cups take effect during which a bridge may still be bought. */
const rampDays = 14;

export function startUpOf(household: PreparedHousehold, prepared: PreparedStrain): StartUp {
  const { totalDays } = household;
  const seedKind = youngServes(household, prepared) ? 'young' : 'producing';
  const windows = [...prepared.strain.existing.map(existingWindow), boughtWindow(household, prepared, seedKind)];
  let session: number | null = null;
  for (let t = 0; t < totalDays && session === null; t++) {
    if (household.problem.workDays[t] && windows.some(([from, until]) => t >= from && t <= until)) session = t;
  }
  if (session === null) return { firstSessionDay: null, homeGrownFromDay: null, bridgeUntilDay: totalDays, seedKind };
  const { firstFlyAge, effectAge } = prepared.curves;
  return {
    firstSessionDay: session,
    homeGrownFromDay: session + (firstFlyAge[session] as number),
    bridgeUntilDay: Math.min(totalDays, session + (effectAge[session] as number) + rampDays),
    seedKind,
  };
}

function existingWindow(cup: ExistingCup): [number, number] {
  const pace = Math.exp(meanOf(cup.draws.logPace, (x) => x, 0));
  const { endAge, failShare } = cup.draws;
  const alive = endAge.reduce((sum, age, s) => sum + (age > cup.ageDays + 1 ? 1 : 1 - (failShare?.[s] ?? 1)), 0);
  if (alive < 0.5 * Math.max(1, endAge.length)) return [1, 0];
  return [
    Math.max(cup.foundersFromDay, cup.curve.founderFromAge / pace - cup.ageDays),
    cup.curve.founderUntilAge / pace - cup.ageDays,
  ];
}

function youngServes(household: PreparedHousehold, prepared: PreparedStrain): boolean {
  const { young, youngAgeDays } = prepared.strain.bought;
  return household.problem.purchase.quarantineDays + youngAgeDays < young.founderUntilAge - 1;
}

function boughtWindow(
  household: PreparedHousehold,
  prepared: PreparedStrain,
  kind: 'young' | 'producing',
): [number, number] {
  const { bought } = prepared.strain;
  const arrival = household.deliveryByOrderDay[0] ?? household.totalDays;
  const curve = bought[kind];
  const age = kind === 'young' ? bought.youngAgeDays : bought.producingAgeDays;
  const released = arrival + household.problem.purchase.quarantineDays;
  return [Math.max(released, arrival + curve.founderFromAge - age), arrival + curve.founderUntilAge - age];
}
