/** How near the best a quarter's plan is, and what its cups are spent on beyond that. */
import { type Said, said, told } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import { type GapSplit, gapSplit, type Solve } from '../../planner/index.ts';
import { settled } from '../kept-work.ts';
import { situation } from '../planning-problem.ts';
import type { Question } from '../question.ts';
import { wordsOf } from '../words/words.ts';
import type { GapStep, gapSteps, PlanGapAnswer } from './plan-gap-answer.ts';

const usualWeeks = 13;
const usualScenarios = 1000;
const foresightWorlds = 12;
/** Worlds of their own: neither those of tuning nor those of the verdict. */
const gapLabel = 0x6a09e667;

export function planGap(facts: Facts, question: Question, solve: Solve): PlanGapAnswer {
  const weeks = question.weeks ?? usualWeeks;
  const scenarios = question.scenarios ?? usualScenarios;
  const { at, parameters } = settled(situation(facts, question, weeks), question);
  const seed = at.problem.seed ^ gapLabel;
  const split = gapSplit(at.problem, parameters, solve, {
    worlds: scenarios,
    foresightWorlds,
    seed,
    purchases: 'any',
  });
  const { plan, foresight, whole } = split;
  return {
    on: question.on,
    seed: question.seed,
    scenarios,
    weeks,
    countedCups: { mean: plan.cups, standardError: plan.standardError },
    foresightCups: { mean: foresight.cups, standardError: foresight.standardError },
    tightness: plan.cups > 0 ? foresight.cups / plan.cups : 1,
    steps: stepsOf(split),
    wholeCupsFound: whole?.found ?? null,
    sentences: told(sentencesOf(split, weeks), wordsOf(question)),
  };
}

/** Each step with what it adds to the one before; it ends where the mean world can't be fed in full. */
function stepsOf({ parts, founders, keeper, whole, certain, plan }: GapSplit): GapStep[] {
  const levels: [(typeof gapSteps)[number], number | null][] = [
    ['parts', parts],
    ['founders', founders],
    ['rules', keeper],
    ['wholeCups', whole?.atLeast ?? null],
    ['search', certain],
    ['uncertainty', plan.cups],
  ];
  const steps: GapStep[] = [];
  let before = 0;
  for (const [step, cups] of levels) {
    if (cups === null) return steps;
    steps.push({ step, cups, adds: cups - before });
    before = cups;
  }
  return steps;
}

function sentencesOf(split: GapSplit, weeks: number): Said[] {
  const { parts, founders, keeper, whole, certain, plan, foresight } = split;
  const counted = said`Over ${weeks} weeks the plan counts ${tenth(plan.cups)} cups: those that give most of their flies within them, a bought one as the started ones it costs.`;
  const bound = said`No plan could do with fewer than ${tenth(foresight.cups)} on average, even one that knew yield and pace beforehand.`;
  if (parts === null || founders === null || keeper === null || whole === null) {
    return [
      counted,
      bound,
      said`Some day would be short even were nothing uncertain, so the rest can't be told apart.`,
    ];
  }
  const core = said`Were nothing uncertain, ${tenth(parts)} would do in parts of cups on any day; founders add ${tenth(founders - parts)}, your days and limits ${tenth(keeper - founders)}, whole cups ${tenth(whole.atLeast - keeper)}.`;
  if (certain === null) return [counted, bound, core];
  const found = whole.found === whole.atLeast ? [] : [notProved(whole)];
  const rest = said`The plan's own way of deciding adds at most ${tenth(certain - whole.atLeast)}: few sessions, founders in reserve, and what a search might still find. Not knowing adds ${tenth(plan.cups - certain)}.`;
  return [counted, bound, core, ...found, rest];
}

function notProved({ atLeast, found }: NonNullable<GapSplit['whole']>): Said {
  return found === null
    ? said`${tenth(atLeast)} whole cups are the least that is proved.`
    : said`${tenth(atLeast)} whole cups are the least that is proved, ${tenth(found)} the fewest found.`;
}

function tenth(cups: number): number {
  return Math.round(cups * 10) / 10;
}
