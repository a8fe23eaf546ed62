/** One plan of a comparison as the doors show it, with what comes of the change in a sentence. */
import {
  chanceFromWorlds,
  type Day,
  dayFromNumber,
  type Said,
  said,
  saidTogether,
  told,
} from '../../foundation/index.ts';
import type { Question } from '../question.ts';
import { wordsOf } from '../words/words.ts';
import type { Change } from './change.ts';
import type { PlanColumn } from './compare-answers.ts';
import { differenceOf, type JudgedPlan, meanOf } from './judged-plan.ts';
import { workMinutes } from './work-minutes.ts';

export function planColumn(
  question: Question,
  today: number,
  plan: JudgedPlan,
  about: { change: Change | null; title: Said; base: JudgedPlan | null },
): PlanColumn {
  const { result } = plan;
  const against = about.base && {
    cups: differenceOf(plan.cups, about.base.cups),
    sessions: differenceOf(plan.sessions, about.base.sessions),
    cost: differenceOf(plan.cost, about.base.cost),
  };
  const worst = result.worstDay;
  const column = {
    culturesPlanned: result.culturesPlanned,
    boughtCultures: result.boughtCultures,
    sessionsPlanned: result.sessions,
    cost: meanOf(plan.cost).mean,
    workMinutes: workMinutes(result.culturesPlanned, result.sessions),
    worstDay: worst ? dayFromNumber(today + worst.day) : null,
    worstDayServiceLevel: worst?.service ?? 1,
    holds: result.holds,
    expectedShortfallDays: result.expectedShortfallDays,
    lowerBoundCultures: result.lowerBound,
    against,
  };
  const words = wordsOf(question);
  return {
    change: about.change,
    title: told(about.title, words),
    verdict: told(verdict(column, result.scenarios), words),
    ...column,
  };
}

type Figures = Pick<
  PlanColumn,
  'against' | 'culturesPlanned' | 'boughtCultures' | 'sessionsPlanned' | 'worstDay' | 'worstDayServiceLevel' | 'holds'
>;

function verdict(column: Figures, scenarios: number): Said {
  const cups = column.against
    ? cupsSaid(column.against.cups)
    : said`${Math.round(column.culturesPlanned + column.boughtCultures)} cups in ${Math.round(column.sessionsPlanned)} sessions.`;
  if (column.worstDay === null) return saidTogether(cups, said`No day can be judged: home-grown flies come too late.`);
  const safe = Math.floor(chanceFromWorlds(column.worstDayServiceLevel, scenarios).share * 1000) / 10;
  const day = { day: column.worstDay as Day };
  const service = column.holds
    ? said`Every day is at least ${safe} % safe.`
    : said`It does not hold: ${day} is only ${safe} % safe.`;
  return saidTogether(cups, service);
}

/** Told as a difference only where it stands clear of chance. */
function cupsSaid({ mean, standardError }: { mean: number; standardError: number }): Said {
  const cups = Math.round(Math.abs(mean));
  if (Math.abs(mean) < 2 * standardError || cups < 1) return said`As many cups, as far as can be told.`;
  if (cups === 1) return mean > 0 ? said`One cup more.` : said`One cup fewer.`;
  return mean > 0 ? said`${cups} cups more.` : said`${cups} cups fewer.`;
}
