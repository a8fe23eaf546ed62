/** Some weeks of a household in a few hundred worlds, as a move of a cup is judged: what they cost, who goes short. */
import { grouped } from '../forecast/cup-groups.ts';
import { prepareHousehold } from '../forecast/prepared-household.ts';
import type { PlanningProblem } from '../problem.ts';
import type { PurchaseMode } from './buying.ts';
import { feedbackPolicy, type PolicyParameters } from './feedback-policy.ts';
import { runWorlds } from './run-worlds.ts';
import { startUpOf } from './start-up.ts';

/** Days that a move is priced over, in a horizon that is as long. */
export const movesPricedDays = 42;
/** Budget of one trial, and the days that it is simulated beyond. */
const worlds = 300;
const runOutDays = 14;
const trialLabel = 0x68e31da4;

export interface MoveTrial {
  /** World by world: cost in the household's weights, days short of any strain, cups bought. */
  cost: Float64Array;
  shortDays: Float64Array;
  bought: Float64Array;
  /** Chance of a missed ration, by strain and day from today. */
  risk: Float64Array[];
}

/** Every trial of a household meets the same worlds; days are judged from today on. */
export function moveTrial(problem: PlanningProblem, parameters: PolicyParameters, mode: PurchaseMode): MoveTrial {
  const days = Math.min(problem.days, movesPricedDays);
  const shorter = { ...problem, days, runOutDays: Math.min(problem.runOutDays, runOutDays) };
  const household = prepareHousehold(grouped(shorter));
  const startUps = household.strains.map((strain) => startUpOf(household, strain));
  const tally = runWorlds(household, feedbackPolicy(parameters, mode, startUps), {
    seed: problem.seed ^ trialLabel,
    worlds,
    judgedFrom: household.strains.map(() => 0),
  });
  const { perCup, perBoughtCup, perSession } = problem.weights;
  const { started, bought, sessions, shortDays } = tally.byWorld;
  return {
    cost: started.map(
      (cups, w) => perCup * cups + perBoughtCup * (bought[w] as number) + perSession * (sessions[w] as number),
    ),
    shortDays,
    bought,
    risk: tally.shortWorlds.map((short) => short.map((n) => n / worlds)),
  };
}
