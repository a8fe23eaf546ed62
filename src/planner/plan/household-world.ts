/**
 * One household in one simulated world under a policy: every strain day by day, sessions shared between
 * strains, deliveries, and a tally of what happened. The same loop runs the mean world for the plan.
 */
import type { PreparedHousehold } from '../forecast/prepared-household.ts';
import {
  addBought,
  addStarted,
  emerge,
  makeStrainWorld,
  resetWorld,
  type StrainWorld,
} from '../forecast/strain-world.ts';
import { founderFlies, takeFounders } from '../forecast/taking-flies.ts';
import { expectBlock, expectDelivery, type KeeperView, makeKeeperView, resetView } from './keeper-view.ts';
import { makeProjection, type Projection } from './projection.ts';
import { clearRations, type FedDay, giveRations, makeFedDay, makeRationBook, type RationBook } from './rations.ts';

export type BoughtKind = 'producing' | 'young';

export interface HouseholdWorld {
  prepared: PreparedHousehold;
  strains: StrainWorld[];
  views: KeeperView[];
  projection: Projection;
  /** A home-grown cup was started or stood there from the beginning: bought ones are kept in quarantine. */
  hasOwnCups: boolean;
  /** Cups to arrive, by strain, kind and day. */
  pending: { producing: Int32Array; young: Int32Array }[];
  /** What the policy wants started today, by strain; the loop cuts it to what is possible. */
  wantedCups: Float64Array;
  /** Cups started at the last session, by strain. */
  startedCups: Float64Array;
  /** Why the policy wants them, by strain. */
  grounds: StartGrounds[];
  rations: RationBook[];
  fedDays: FedDay[];
  events: WorldEvents;
}

/** Why cups are wanted at a session: what would happen without them. */
export interface StartGrounds {
  /** Cups wanted for the need, and for the line of founders. */
  forNeed: number;
  forFounders: number;
  /** Cups wanted so that enough of the strain can found others. */
  forBackup: number;
  /** First day that would not be safe without them; -1 when none. */
  shortDay: number;
  /** Days that this session has to see to: from the first to before the last. */
  firstDay: number;
  untilDay: number;
}

/** Hears what happens in a world; every member is called in order of the days. */
export interface WorldEvents {
  day(strain: number, t: number, emerging: number, onHand: number, fed: FedDay): void;
  started(strain: number, t: number, cups: number, wanted: number): void;
  ordered(strain: number, t: number, arrival: number, kind: BoughtKind, cups: number, purpose: BoughtPurpose): void;
  /** Before founders are taken, and before animals are fed; for those who look into the cups. */
  beforeSession?(strain: number, t: number): void;
  beforeFeeding?(strain: number, t: number): void;
}

export type BoughtPurpose = 'gap' | 'founders';

/** What decides: called on every day, before founders are taken and animals are fed. */
export interface Policy {
  /** Sets `hw.wantedCups` on work days. */
  start(hw: HouseholdWorld, t: number): void;
  /** May call `order`. */
  buy(hw: HouseholdWorld, t: number): void;
  /** Told when a world begins and after each session, for policies that remember. */
  beginWorld?(hw: HouseholdWorld): void;
  afterSession?(hw: HouseholdWorld, t: number): void;
}

export function makeHouseholdWorld(prepared: PreparedHousehold, events: WorldEvents): HouseholdWorld {
  const strains = prepared.strains.map(makeStrainWorld);
  const days = () => new Int32Array(prepared.totalDays);
  return {
    prepared,
    strains,
    views: strains.map((sw) => makeKeeperView(sw, prepared.totalDays)),
    projection: makeProjection(),
    hasOwnCups: !prepared.fromNothing,
    pending: strains.map(() => ({ producing: days(), young: days() })),
    wantedCups: new Float64Array(strains.length),
    startedCups: new Float64Array(strains.length),
    grounds: strains.map(() => ({ forNeed: 0, forFounders: 0, forBackup: 0, shortDay: -1, firstDay: 0, untilDay: 0 })),
    rations: prepared.strains.map(makeRationBook),
    fedDays: prepared.strains.map(makeFedDay),
    events,
  };
}

/**
 * Runs world `world` of `seed` under a policy from today on, for `days` days; to the end of the run-out unless given.
 * What a policy decides rests on what it expects, so days that nobody asks about need not be lived through.
 */
export function runWorld(
  hw: HouseholdWorld,
  policy: Policy,
  seed: number,
  world: number,
  days = hw.prepared.totalDays,
): void {
  hw.hasOwnCups = !hw.prepared.fromNothing;
  for (let k = 0; k < hw.strains.length; k++) {
    resetWorld(hw.strains[k] as StrainWorld, seed, world);
    resetView(hw.views[k] as KeeperView);
    clearRations(hw.rations[k] as RationBook);
    hw.pending[k]?.producing.fill(0);
    hw.pending[k]?.young.fill(0);
    for (const { kind, cups, arrivalDay } of hw.strains[k]?.prepared.strain.awaited ?? []) {
      expectParcel(hw, k, kind, cups, arrivalDay);
    }
  }
  policy.beginWorld?.(hw);
  for (let t = 0; t < days; t++) runDay(hw, policy, t);
}

function runDay(hw: HouseholdWorld, policy: Policy, t: number): void {
  const isWorkDay = hw.prepared.problem.workDays[t] === 1;
  for (let k = 0; k < hw.strains.length; k++) {
    const sw = hw.strains[k] as StrainWorld;
    deliver(hw, k, t);
    emerge(sw, t);
  }
  policy.buy(hw, t);
  if (isWorkDay) {
    policy.start(hw, t);
    holdSession(hw, t);
    policy.afterSession?.(hw, t);
  }
  for (let k = 0; k < hw.strains.length; k++) {
    const sw = hw.strains[k] as StrainWorld;
    const onHand = sw.onHand;
    const fed = hw.fedDays[k] as FedDay;
    hw.events.beforeFeeding?.(k, t);
    giveRations(sw, hw.rations[k] as RationBook, t, sw.household.needFactor, hw.prepared.nextWorkDay[t] as number, fed);
    hw.events.day(k, t, sw.emerging, onHand, fed);
  }
}

function deliver(hw: HouseholdWorld, k: number, t: number): void {
  const pending = hw.pending[k];
  if (!pending) return;
  const released = hw.hasOwnCups ? t + hw.prepared.problem.purchase.quarantineDays : t;
  const producing = pending.producing[t] as number;
  const young = pending.young[t] as number;
  if (producing > 0) addBought(hw.strains[k] as StrainWorld, t, producing, 'producing', released);
  if (young > 0) addBought(hw.strains[k] as StrainWorld, t, young, 'young', released);
}

/** Places an order today for the first delivery that it can reach. */
export function order(
  hw: HouseholdWorld,
  k: number,
  t: number,
  kind: BoughtKind,
  cups: number,
  purpose: BoughtPurpose,
): void {
  const arrival = hw.prepared.deliveryByOrderDay[t] as number;
  if (arrival >= hw.prepared.totalDays || cups <= 0) return;
  expectParcel(hw, k, kind, cups, arrival);
  hw.events.ordered(k, t, arrival, kind, cups, purpose);
}

function expectParcel(hw: HouseholdWorld, k: number, kind: BoughtKind, cups: number, arrival: number): void {
  const pending = hw.pending[k];
  if (!pending || arrival >= hw.prepared.totalDays) return;
  pending[kind][arrival] = (pending[kind][arrival] as number) + cups;
  expectDelivery(hw.views[k] as KeeperView, kind, arrival, cups);
}

/** Starts what the policy wants, as far as session, shelf and founders allow. */
function holdSession(hw: HouseholdWorld, t: number): void {
  const { maxCupsPerSession, shelfCups, cupsOnHandByDay } = hw.prepared.problem;
  const onHand = cupsOnHandByDay?.[t] ?? maxCupsPerSession;
  let living = 0;
  for (const sw of hw.strains) living += sw.livingCups;
  fitSession(hw.wantedCups, Math.max(0, Math.min(maxCupsPerSession, onHand, shelfCups - living)));
  for (let k = 0; k < hw.strains.length; k++) {
    const wanted = hw.wantedCups[k] as number;
    hw.startedCups[k] = 0;
    if (wanted <= 0) continue;
    hw.events.beforeSession?.(k, t);
    const sw = hw.strains[k] as StrainWorld;
    const perCup = sw.prepared.strain.foundersPerCup;
    const available = founderFlies(sw, t);
    const cups = perCup > 0 ? Math.min(wanted, Math.floor(available / perCup)) : wanted;
    if (cups > 0) {
      hw.hasOwnCups = true;
      takeFounders(sw, t, cups * perCup, available);
      addStarted(sw, t, cups, (block, day) => expectBlock(hw.views[k] as KeeperView, block, day));
    }
    hw.startedCups[k] = cups;
    hw.events.started(k, t, cups, wanted);
  }
}

/** Cuts the wishes in proportion so that their sum is at most `most`. */
function fitSession(wanted: Float64Array, most: number): void {
  let sum = 0;
  for (const cups of wanted) sum += cups;
  if (sum <= most) return;
  const share = most / sum;
  let left = most;
  for (let k = 0; k < wanted.length; k++) {
    const cups = Math.min(left, k === wanted.length - 1 ? left : Math.round((wanted[k] as number) * share));
    wanted[k] = cups;
    left -= cups;
  }
}
