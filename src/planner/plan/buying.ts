/**
 * Purchases: what home-grown cups can't reach in time is ordered on the last day that still makes a parcel, and
 * cups for founders where the line of them would break. Who has no home-grown cup orders for longer, for all
 * strains at once, so that few parcels come.
 */
import { founderCups, founderSources } from './founder-line.ts';
import { type HouseholdWorld, order } from './household-world.ts';
import { type KeeperView, look } from './keeper-view.ts';
import { fewestCups, firstShortDay, project } from './projection.ts';
import type { StartUp } from './start-up.ts';

/** Which purchases are allowed: none, those that bridge the days before home-grown flies, or any. */
export type PurchaseMode = 'none' | 'bridge' | 'any';

export interface BuyingRule {
  mode: PurchaseMode;
  startUps: StartUp[];
  /** Standard deviations of cover by day, by strain. */
  safety: Float64Array[];
  /** See PolicyParameters. */
  parcelDays: number;
}

/** Cups at their best that a household without a home-grown one should be able to found others with. */
const firstFounderCups = 2;

export function buyWhatIsMissing(hw: HouseholdWorld, t: number, rule: BuyingRule): void {
  const { deliveryByOrderDay, totalDays, fromNothing } = hw.prepared;
  const arrival = deliveryByOrderDay[t] as number;
  const later = t + 1 < totalDays ? (deliveryByOrderDay[t + 1] as number) : totalDays;
  if (arrival >= totalDays || arrival === later) return;
  const isBridging = (k: number) => arrival < (rule.startUps[k] as StartUp).bridgeUntilDay;
  const buying = hw.views
    .map((_, k) => k)
    .filter((k) => (rule.mode === 'any' || isBridging(k)) && isWorthBuying(hw, k, arrival));
  // One parcel for all: who must order for one strain sees to the others too.
  const together = fromNothing && rule.parcelDays > 0;
  const joined = together && buying.some((k) => isBridging(k) && isPressing(hw, k, t, rule));
  for (const k of buying) {
    const bridging = isBridging(k);
    if (hw.hasOwnCups) buySeed(hw, k, t, bridging ? 2 : 1, rule);
    else if (founderCups(hw, k, t) === 0) order(hw, k, t, 'young', 1, 'founders');
    buyForGap(hw, k, t, bridging && joined ? rule.parcelDays : 0, rule);
    if (!hw.hasOwnCups) buyFirstSeed(hw, k, t, rule);
  }
}

/** A cup that gives back fewer flies than one is started with feeds nobody and founds nothing. */
function isWorthBuying(hw: HouseholdWorld, k: number, arrival: number): boolean {
  const { curves, strain, lastNeedDay } = (hw.views[k] as KeeperView).sw.prepared;
  return lastNeedDay >= arrival && (curves.totalExpected[curves.producing] as number) >= strain.foundersPerCup;
}

/** Two sources while starting up, from different deliveries: one may fail. */
function buySeed(hw: HouseholdWorld, k: number, t: number, sources: number, { startUps }: BuyingRule): void {
  const { seedKind } = startUps[k] as StartUp;
  const arrival = hw.prepared.deliveryByOrderDay[t] as number;
  const inThisParcel = hw.pending[k]?.[seedKind][arrival] ?? 0;
  if (inThisParcel === 0 && founderSources(hw, k, t) < sources) order(hw, k, t, seedKind, 1, 'founders');
}

/**
 * Where nothing is home-grown yet, cups bought to be fed from found the first ones too, and a young one in the same
 * parcel the next; what they lack comes with them.
 */
function buyFirstSeed(hw: HouseholdWorld, k: number, t: number, { startUps }: BuyingRule): void {
  const missing = Math.ceil(firstFounderCups - founderCups(hw, k, t));
  order(hw, k, t, (startUps[k] as StartUp).firstSeedKind, missing, 'founders');
}

/** The days that a parcel ordered on `t` has to see to, from `first` to before `until`, `extraDays` more than it must. */
function daysOfParcel(hw: HouseholdWorld, k: number, t: number, extraDays: number, { startUps }: BuyingRule) {
  const { deliveryByOrderDay, totalDays } = hw.prepared;
  const arrival = deliveryByOrderDay[t] as number;
  const later = t + 1 < totalDays ? (deliveryByOrderDay[t + 1] as number) : totalDays;
  const { curves, strain } = (hw.views[k] as KeeperView).sw.prepared;
  const { bridgeUntilDay } = startUps[k] as StartUp;
  const born = arrival - strain.bought.producingAgeDays;
  // A delivered cup helps once a quarter of its flies are out; a later delivery sees to later days. No parcel before
  // the first sees to the days until then.
  const lag = Math.max(0, (curves.effectAge[curves.producing] as number) - strain.bought.producingAgeDays);
  const reach = arrival < bridgeUntilDay ? bridgeUntilDay : homeReach(hw, k, t);
  const until = Math.min(later + lag + extraDays, reach, totalDays, born + curves.stride);
  const first = arrival === deliveryByOrderDay[0] ? arrival : arrival + lag;
  return { first, until, candidate: { curve: curves.producing, born } };
}

/** Whether a day would be short that no later parcel can help. */
function isPressing(hw: HouseholdWorld, k: number, t: number, rule: BuyingRule): boolean {
  const view = hw.views[k] as KeeperView;
  const { first, until, candidate } = daysOfParcel(hw, k, t, 0, rule);
  if (until <= first) return false;
  project(view, t, look(view, t), first, until, hw.projection);
  return firstShortDay(view, hw.projection, candidate, 0, rule.safety[k] as Float64Array, until) >= 0;
}

function buyForGap(hw: HouseholdWorld, k: number, t: number, extraDays: number, rule: BuyingRule): void {
  const view = hw.views[k] as KeeperView;
  const safety = rule.safety[k] as Float64Array;
  const { first, until, candidate } = daysOfParcel(hw, k, t, extraDays, rule);
  if (until <= first) return;
  project(view, t, look(view, t), first, until, hw.projection);
  if (firstShortDay(view, hw.projection, candidate, 0, safety, until) < 0) return;
  const { curves, meanNeed } = view.sw.prepared;
  const perCup = Math.max(1, curves.totalExpected[candidate.curve] as number);
  const wanted = 3 + Math.ceil((2.5 * meanNeed * (until - first)) / perCup);
  const most = Math.min(wanted, hw.prepared.problem.shelfCups);
  order(hw, k, t, 'producing', fewestCups(view, hw.projection, candidate, most, safety, until), 'gap');
}

/** First day on which cups that are not started yet could help. */
function homeReach(hw: HouseholdWorld, k: number, t: number): number {
  const next = hw.prepared.nextWorkDay[t] as number;
  const { curves } = (hw.views[k] as KeeperView).sw.prepared;
  return next < hw.prepared.totalDays ? next + (curves.effectAge[next] as number) : hw.prepared.totalDays;
}
