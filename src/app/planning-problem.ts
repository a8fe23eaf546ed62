/** The planner's problem, from facts, models and beliefs. The only place where they meet. */
import { ordinaryFounderAge } from '../biology/index.ts';
import { dayFromNumber, dayNumber, weekdayOf } from '../foundation/index.ts';
import {
  type Beliefs,
  type CupBelief,
  emergedBetween,
  ordinaryPrior,
  runningTotal,
  type StrainBelief,
} from '../learning/index.ts';
import type { CultureFacts, Facts } from '../logbook/index.ts';
import type { CupCurve, ExistingCup, PlanningProblem, StrainProblem } from '../planner/index.ts';
import { feedingNow } from './animals/feeding-now.ts';
import { beliefDraws } from './belief-draws.ts';
import { withoutFedToday } from './fed-today.ts';
import { type HeldOut, heldOut } from './held-out.ts';
import { heldOutCup, never } from './held-out-cup.ts';
import { cupsOnHandByDay } from './plan/cups-on-hand.ts';
import { awaitedCups } from './awaited-cups.ts';
import { cupHistories, believe, type Histories } from './evidence.ts';
import {
  type HouseholdModel,
  householdModel,
  type StrainModel,
  usualContainer,
  usualPlace,
} from './household-model.ts';
import { groupNeeds, needOf, needScenarios, orderedFlies } from './need.ts';
import { cupCurve, nominalAt } from './nominal-cup.ts';
import { failingAges, failureNoticedDays } from './failure-habits.ts';
import { hasWinged, isSick } from './sick-cup.ts';
import { withWeatherAhead } from './temperature/weather-draws.ts';
import { weatherPaceSd } from './temperature/weather-pace.ts';
import type { Question } from './question.ts';
import type { CupHistory } from './cup-history.ts';

export interface Situation {
  model: HouseholdModel;
  histories: Histories;
  beliefs: Beliefs;
  problem: PlanningProblem;
}

const sessionPaceSd = 0.02;
/** Days simulated past the horizon, so that its end costs nothing: two generations of a slow strain. */
const runOutDays = 56;

/** @param weeks length of the horizon. */
export function situation(facts: Facts, question: Question, weeks: number): Situation {
  const days = weeks * 7;
  const model = householdModel(feedingNow(facts, question.on).facts, question.on, days + runOutDays);
  const histories = cupHistories(model);
  const believed = believe(model, histories, question.seed, beliefDraws(histories));
  const beliefs = withWeatherAhead(model, histories, believed, question.seed);
  return { model, histories, beliefs, problem: planningProblem(model, histories, beliefs, question.seed, days) };
}

/**
 * The same household over a horizon of its own, had every place been that much warmer from today on. What
 * was seen of it so far stays as it was seen, so that nothing is learned anew and a slider can be followed.
 */
export function warmerSituation(
  { model: now, beliefs, problem: { seed } }: Situation,
  byC: number,
  weeks: number,
): Situation {
  const days = weeks * 7;
  const model = householdModel(now.facts, dayFromNumber(now.today), days + runOutDays, undefined, byC);
  const histories = cupHistories(model);
  return { model, histories, beliefs, problem: planningProblem(model, histories, beliefs, seed, days) };
}

export function planningProblem(
  model: HouseholdModel,
  histories: Histories,
  beliefs: Beliefs,
  seed: number,
  days: number,
): PlanningProblem {
  const { household } = model.facts;
  const all = days + runOutDays;
  const need = needOf(model.facts, model.today, all);
  const draws = needScenarios(model.facts, model.today, all, seed);
  return {
    seed,
    dayZero: model.today,
    days,
    runOutDays,
    workDays: workDays(model.facts, model.today, all),
    maxCupsPerSession: household.maxCupsPerSession,
    cupsOnHandByDay: cupsOnHandByDay(model),
    shelfCups: household.shelfCups,
    serviceLevel: household.serviceLevel,
    purchase: {
      leadDays: household.purchase.leadDays,
      deliveryDays: daysWhere(all, (i) =>
        household.purchase.deliveryWeekdays.includes(weekdayOf(dayFromNumber(model.today + i))),
      ),
      quarantineDays: household.purchase.quarantineDays,
      arrivalLossShare: 0.05,
    },
    weights: household.weights,
    strains: [...model.strains]
      .filter(([key]) => need.has(key) || hasLiving(histories.get(key)))
      .map(([key, strain]) =>
        strainProblem(model, strain, histories.get(key) ?? [], beliefs, {
          all,
          wanted: need.get(key)?.flies ?? new Float64Array(all),
          logSd: need.get(key)?.logSd ?? 0,
          draws: draws.get(key),
          seed,
        }),
      ),
  };
}

function hasLiving(cups: CupHistory[] | undefined): boolean {
  return (cups ?? []).some((c) => c.end === null);
}

/** Days with time for fly work: the household's weekdays, less absences. */
function workDays(facts: Facts, today: number, all: number): Uint8Array {
  return daysWhere(all, (i) => {
    const day = dayFromNumber(today + i);
    const away = facts.absences.some((a) => a.from <= day && day <= a.until);
    return !away && facts.household.workWeekdays.includes(weekdayOf(day));
  });
}

function daysWhere(length: number, holds: (i: number) => boolean): Uint8Array {
  return Uint8Array.from({ length }, (_, i) => (holds(i) ? 1 : 0));
}

function strainProblem(
  model: HouseholdModel,
  strain: StrainModel,
  cups: CupHistory[],
  beliefs: Beliefs,
  need: { all: number; wanted: Float64Array; logSd: number; draws: Float32Array[] | undefined; seed: number },
): StrainProblem {
  const key = strain.facts.strain;
  const usual = usualStart(model, strain);
  const cup = (day: number) => nominalAt(model, strain, usual.stays, model.today + day, usual.conditions);
  const curves = Array.from({ length: need.all }, (_, day) => cupCurve(cup(day)));
  const { stays, conditions } = usual;
  const failing = failingAges(model, strain, stays, model.today, conditions, cup(0).dates.spent);
  const held = heldOut(model, strain, cups);
  const wanted = {
    wantedFlies: need.wanted,
    groups: groupNeeds(model.facts, key, model.today, need.all, need.seed),
    ...(need.draws && { needDraws: need.draws }),
  };
  return {
    strain: key,
    ...withoutFedToday(wanted, model, key, cups),
    needLogSd: need.logSd,
    orderedFlies: orderedFlies(model.facts, key, model.today, need.all),
    curves,
    foundersPerCup: conditions.founders,
    backupCups: model.facts.household.backup?.cupsPerStrain ?? 0,
    adultDailySurvival: strain.adultDailySurvival,
    existing: cups.flatMap((cup) => existingCup(model, cup, beliefs, held)),
    awaited: awaitedCups(model.facts, key, model.today),
    bought: boughtCurves(curves[0] as CupCurve),
    uncertainty: uncertainty(beliefs.byStrain.get(key), weatherPaceSd(model, strain), failing),
  };
}

/** Where and how new cups of a strain are started. */
function usualStart(model: HouseholdModel, strain: StrainModel) {
  const key = strain.facts.strain;
  const container = usualContainer(model.facts, key);
  const founders = Math.max(container.founders, model.facts.household.leastFounders ?? 0);
  return {
    stays: [{ from: model.facts.lastEntryOn ?? dayFromNumber(model.today), place: usualPlace(model, key) }],
    conditions: { ...container, founders, founderAgeDays: ordinaryFounderAge(strain.life) },
  };
}

/** A producing cup arrives as its flies come out; a young one with larvae, days before. */
function boughtCurves(curve: CupCurve): StrainProblem['bought'] {
  const firstAdults = curve.emergedByAge.findIndex((flies) => flies >= 1);
  return {
    producing: curve,
    producingAgeDays: Math.max(1, firstAdults + 2),
    young: curve,
    youngAgeDays: Math.max(1, Math.round(firstAdults / 2) - 2),
  };
}

function existingCup(model: HouseholdModel, cup: CupHistory, beliefs: Beliefs, held: HeldOut): ExistingCup[] {
  if (cup.end !== null) {
    const flies = held.get(cup.culture.culture) ?? 0;
    return flies > 0 ? [heldOutCup(cup, model.today, flies, drawsOf(beliefs))] : [];
  }
  const belief = beliefs.cups.get(cup.culture.culture);
  if (!belief || isSick(cup.culture)) return [];
  return [
    {
      id: cup.culture.culture,
      ...(cup.culture.origin === 'bought' && { bought: true }),
      ageDays: model.today - cup.start,
      curve: cupCurve(cup.nominal),
      foundersFromDay: foundersFromDay(cup.culture, model.today),
      draws: plannerDraws(belief.draws, cup.nominal.course.emerged, model.today - cup.start),
    },
  ];
}

/** Draws that each living cup has; one where none lives. */
function drawsOf({ cups }: Beliefs): number {
  for (const { draws } of cups.values()) return draws.logPace.length;
  return 1;
}

function foundersFromDay(culture: CultureFacts, today: number): number {
  if (hasWinged(culture)) return never;
  return culture.quarantinedUntil === null ? 0 : Math.max(0, dayNumber(culture.quarantinedUntil) - today);
}

/**
 * The planner throws cups out by age; only a failure ends one before, and takes its flies. It begins in the
 * morning and lets today's flies emerge itself, so those that learning has counted already are taken off.
 */
function plannerDraws(
  { logPace, logYield, failAge, fliesNow }: CupBelief['draws'],
  emergedByAge: Float64Array,
  ageDays: number,
): ExistingCup['draws'] {
  const total = runningTotal(emergedByAge);
  const before = fliesNow.map((flies, s) => {
    const today = emergedBetween(total, ageDays - 1, ageDays, logPace[s] as number) * Math.exp(logYield[s] as number);
    return Math.max(0, flies - today);
  });
  return { logPace, logYield, endAge: failAge, fliesNow: before };
}

function uncertainty(
  belief: StrainBelief | undefined,
  weatherSd: number,
  failedBefore: Float64Array,
): StrainProblem['uncertainty'] {
  const none = new Float64Array(0);
  return {
    yieldLogSd: {
      household: belief?.logYield.sd ?? ordinaryPrior.householdYieldSd,
      session: ordinaryPrior.sessionYieldSd,
      cup: belief?.cupYieldSd ?? ordinaryPrior.cupYieldSd,
    },
    paceLogSd: {
      household: belief?.logPace.sd ?? ordinaryPrior.householdPaceSd,
      session: Math.hypot(sessionPaceSd, weatherSd),
      cup: ordinaryPrior.cupPaceSd,
    },
    failure: {
      perCup: belief?.failureChance.mean ?? betaMean(ordinaryPrior.failure),
      perSession: belief?.sessionFailureChance.mean ?? betaMean(ordinaryPrior.sessionFailure),
      failedBefore,
    },
    countLogSd: belief?.countSd ?? ordinaryPrior.countSd,
    failureNoticedDays,
    householdDraws: belief?.draws ?? { logYield: none, logPace: none },
  };
}

function betaMean({ a, b }: { a: number; b: number }): number {
  return a / (a + b);
}
