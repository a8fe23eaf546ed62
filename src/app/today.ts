/** What to do today and in the coming fortnight, and every living cup as it stands. */
import { addDays, type Band, bandOf, told } from '../foundation/index.ts';
import type { CupBelief } from '../learning/index.ts';
import type { Facts } from '../logbook/index.ts';
import { policyJobs } from '../planner/index.ts';
import { feedingNow } from './animals/feeding-now.ts';
import { animalWarnings } from './animals/warnings.ts';
import type { TodayAnswer } from './answers.ts';
import { barrenStrains } from './barren-strains.ts';
import { cultureToday, roundedBand } from './culture-today.ts';
import { stretchJob } from './jobs/stretch-job.ts';
import { isSick } from './sick-cup.ts';
import { settled } from './kept-work.ts';
import { allJobs, usualPlanWeeks } from './plan.ts';
import { shortAhead } from './plan/short-ahead.ts';
import { type Situation, situation } from './planning-problem.ts';
import type { Question } from './question.ts';
import { heldOut } from './held-out.ts';
import { needOf } from './need.ts';
import { householdAlarms } from './temperature/alarms.ts';
import { joinedJobs } from './jobs/joined-jobs.ts';
import { wordsOf } from './words/words.ts';

const soonDays = 14;

export function today(facts: Facts, question: Question): TodayAnswer {
  const at = situation(facts, question, question.weeks ?? usualPlanWeeks);
  // The same jobs as the plan's; what the plan promises is not asked here.
  const found = settled(at, question);
  const planned = policyJobs(found.at.problem, found.parameters);
  const jobs = allJobs(at, found, planned);
  const last = addDays(question.on, soonDays);
  const onHandFlies = Object.fromEntries(at.problem.strains.map((s) => [s.strain, onHand(at, s.strain)]));
  const stretched = at.problem.strains.flatMap(
    ({ strain }) =>
      stretchJob(feedingNow(facts, question.on).facts, strain, question.on, onHandFlies[strain]?.p50 ?? 0) ?? [],
  );
  // Without a single fly there is nothing to feed: the stretching job says who can wait, and what to do.
  const empty = new Set(stretched.filter(({ flies }) => flies === 0).map(({ strain }) => strain));
  const todays = jobs.filter((job) => job.date === question.on);
  const wanted = needOf(at.model.facts, at.model.today, 1);
  const answer = {
    on: question.on,
    seed: question.seed,
    household: facts.household.name,
    jobs: [...stretched, ...todays.filter((job) => !(job.kind === 'feed' && empty.has(job.strain)))],
    soon: jobs.filter((job) => job.date > question.on && job.date <= last),
    cultures: [...at.histories.values()].flatMap((cups) =>
      cups.filter((c) => c.end === null).map((cup) => cultureToday(cup, at.beliefs, at.model.today)),
    ),
    wantedFlies: Object.fromEntries(at.problem.strains.map((s) => [s.strain, wanted.get(s.strain)?.flies[0] ?? 0])),
    onHandFlies,
    warnings: [
      ...animalWarnings(facts, question.on).map(({ text }) => text),
      ...barrenStrains(at),
      ...shortAhead(found.at, found.shortSpells, planned),
      ...householdAlarms(facts, question.on),
    ],
    problems: facts.problems.map(({ where, found, expected }) => ({ where, found, expected })),
  };
  const { soon, ...shown } = told(answer, wordsOf(question));
  return { ...shown, soon: joinedJobs(soon) };
}

/** Flies that may be fed now, in living cups and tapped out of ended ones: draws of one scenario belong together. */
function onHand(at: Situation, strain: string): Band {
  const beliefs = (at.histories.get(strain) ?? [])
    .filter((c) => c.end === null && !isSick(c.culture))
    .map((c) => at.beliefs.cups.get(c.culture.culture) as CupBelief);
  const life = at.model.strains.get(strain);
  const held = life ? [...heldOut(at.model, life, at.histories.get(strain) ?? []).values()] : [];
  const tappedOut = held.reduce((sum, flies) => sum + flies, 0);
  const draws = beliefs[0]?.draws.fliesNow.length ?? 1;
  const sums = Float64Array.from({ length: draws }, (_, s) =>
    beliefs.reduce((sum, b) => sum + (b.draws.fliesNow[s] as number), tappedOut),
  );
  return roundedBand(bandOf(sums));
}
