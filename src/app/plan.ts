/** The dated jobs that keep every day fed, and what the plan promises. */
import { dayFromNumber, told } from '../foundation/index.ts';
import type { Facts } from '../logbook/index.ts';
import { type PlannedJob, type PlanResult, planSupply } from '../planner/index.ts';
import type { Job, PlanAnswer } from './answers.ts';
import { barrenStrains } from './barren-strains.ts';
import { cultureToday } from './culture-today.ts';
import { kitchenJobs } from './jobs/kitchen-jobs.ts';
import { moveJobs } from './jobs/move-jobs.ts';
import { type Settled, settled } from './kept-work.ts';
import { serviceOf } from './plan/plan-service.ts';
import { shortAhead } from './plan/short-ahead.ts';
import { discardJobs } from './jobs/discard-jobs.ts';
import { lookJobs } from './jobs/look-jobs.ts';
import { plannedJobs } from './jobs/planned-jobs.ts';
import { receiveJobs } from './jobs/receive-jobs.ts';
import type { SaidJob } from './jobs/said-job.ts';
import { type Situation, situation } from './planning-problem.ts';
import type { Question } from './question.ts';
import { wordsOf } from './words/words.ts';

export const usualPlanWeeks = 26;
const usualScenarios = 2000;
/** Looks are listed this far ahead: later ones depend on what is seen before. */
const lookDays = 14;
const discardDays = 21;

export function plan(facts: Facts, question: Question): PlanAnswer {
  const weeks = question.weeks ?? usualPlanWeeks;
  const asItStands = situation(facts, question, weeks);
  const found = settled(asItStands, question);
  const result = planSupply(found.at.problem, {
    scenarios: question.scenarios ?? usualScenarios,
    parameters: found.parameters,
  });
  return planAnswer(question, weeks, found, result, allJobs(asItStands, found, result.jobs));
}

function planAnswer(
  question: Question,
  weeks: number,
  { at, shortSpells }: Settled,
  result: PlanResult,
  jobs: SaidJob[],
): PlanAnswer {
  const dateOf = (t: number) => dayFromNumber(at.model.today + t);
  const wanted = wantedDays(at, result);
  const worst =
    result.worstDay ?? wanted.reduce<WantedDay | null>((a, b) => (a && a.service <= b.service ? a : b), null);
  const nothingJudged = result.worstDay === null;
  const words = wordsOf(question);
  return {
    on: question.on,
    seed: question.seed,
    scenarios: result.scenarios,
    weeks,
    jobs: told(jobs, words),
    culturesPlanned: result.culturesPlanned,
    boughtCultures: result.boughtCultures,
    sessionsPlanned: result.sessions,
    lowerBoundCultures: result.lowerBound,
    culturesUnderCertainty: result.cupsUnderCertainty,
    worstDayServiceLevel: worst?.service ?? 1,
    worstDay: worst ? dateOf(worst.day) : null,
    warnings: told([...barrenStrains(at), ...shortAhead(at, shortSpells, result.jobs)], words),
    homeGrownFrom: Object.fromEntries(
      result.homeGrownFromDay.map(({ strain, day }) => [strain, day === null ? null : dateOf(day)]),
    ),
    expectedShortfallDays: nothingJudged
      ? wanted.reduce((sum, { service }) => sum + 1 - service, 0)
      : result.expectedShortfallDays,
    chanceOfNoShortfall: nothingJudged ? (worst?.service ?? 1) : result.chanceOfNoShortfall,
    ...serviceOf(at, result),
    serviceLevelByDay: result.serviceByDay.flatMap(({ strain, service }) =>
      Array.from(service, (serviceLevel, t) => ({ date: dateOf(t), strain, serviceLevel })),
    ),
  };
}

interface WantedDay {
  day: number;
  service: number;
}

/**
 * Every strain's days with a need. Where no home-grown fly can be had at all the planner judges no day;
 * then these say what will be short.
 */
function wantedDays(at: Situation, result: PlanResult): WantedDay[] {
  return result.serviceByDay.flatMap(({ service }, k) =>
    Array.from(service, (level, day) => ({ day, service: level })).filter(
      ({ day }) => (at.problem.strains[k]?.wantedFlies[day] ?? 0) > 0,
    ),
  );
}

/**
 * Planned jobs and looks, by day and in the order in which an evening goes; those after a cup was carried are
 * of the household with the cup carried.
 */
export function allJobs(
  asItStands: Situation,
  { at, moves }: Pick<Settled, 'at' | 'moves'>,
  jobsOfPolicy: PlannedJob[],
): SaidJob[] {
  const { model, histories, beliefs } = at;
  const cupJobs = [...histories.values()].flatMap((cups) => {
    const living = cups.filter((c) => c.end === null);
    const states = living.map((cup) => cultureToday(cup, beliefs, model.today));
    const looks = lookJobs(living, states, model.today, lookDays);
    return [...looks, ...discardJobs(living, model.today, discardDays)];
  });
  const planned = plannedJobs(at, jobsOfPolicy);
  const kitchen = kitchenJobs(model.facts, planned, dayFromNumber(model.today));
  // A counted kitchen mixes for all starts that a batch lasts for; later, or else, each day's starts are mixed for.
  const withoutKitchen = kitchen ? planned.filter((job) => job.kind !== 'mix' || job.date > kitchen.until) : planned;
  const others = [...cupJobs, ...receiveJobs(model.facts, model.today), ...moveJobs(asItStands, moves)];
  const jobs = [...withoutKitchen, ...(kitchen?.jobs ?? []), ...others];
  return jobs.sort((a, b) => compare(a.date, b.date) || order.indexOf(a.kind) - order.indexOf(b.kind));
}

const order: Job['kind'][] = [
  'feed',
  'look',
  'wash',
  'mix',
  'start',
  'receive',
  'buy',
  'move',
  'stretch',
  'shop',
  'discard',
];

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
