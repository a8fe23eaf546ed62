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
  /** The same while there is no home-grown cup, so no quarantine: producing when it meets a session at its best. */
  firstSeedKind: 'young' | 'producing';
}

/** Days after the first home-grown cups take effect during which a bridge may still be bought. */
const rampDays = 14;

export function startUpOf(household: PreparedHousehold, prepared: PreparedStrain): StartUp {
  const { totalDays } = household;
  const kinds = {
    seedKind: youngServes(household, prepared) ? 'young' : 'producing',
    firstSeedKind: firstSession(household, [boughtWindow(household, prepared, 'producing', 0)]) ? 'producing' : 'young',
  } as const;
  const session = firstSession(household, [
    ...prepared.strain.existing.map(existingWindow),
    household.fromNothing
      ? boughtWindow(household, prepared, kinds.firstSeedKind, 0)
      : boughtWindow(household, prepared, kinds.seedKind, household.problem.purchase.quarantineDays),
  ]);
  if (session === null) return { firstSessionDay: null, homeGrownFromDay: null, bridgeUntilDay: totalDays, ...kinds };
  const { firstFlyAge, effectAge } = prepared.curves;
  return {
    firstSessionDay: session,
    homeGrownFromDay: session + (firstFlyAge[session] as number),
    bridgeUntilDay: Math.min(totalDays, session + (effectAge[session] as number) + rampDays),
    ...kinds,
  };
}

/** First work day within one of the spans of days; null when there is none. */
function firstSession({ problem, totalDays }: PreparedHousehold, windows: [number, number][]): number | null {
  for (let t = 0; t < totalDays; t++) {
    if (problem.workDays[t] && windows.some(([from, until]) => t >= from && t <= until)) return t;
  }
  return null;
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
  quarantineDays: number,
): [number, number] {
  const { bought } = prepared.strain;
  const arrival = household.deliveryByOrderDay[0] ?? household.totalDays;
  const curve = bought[kind];
  const age = kind === 'young' ? bought.youngAgeDays : bought.producingAgeDays;
  const released = arrival + quarantineDays;
  return [Math.max(released, arrival + curve.founderFromAge - age), arrival + curve.founderUntilAge - age];
}
