/** Why one day's plan is not the earlier one's: what the log has taught or told in between. */
import { type Day, dayNumber, type Said, said } from '../../foundation/index.ts';
import type { CultureFacts } from '../../logbook/index.ts';
import type { Situation } from '../planning-problem.ts';

/** Changes smaller than these are not told: shares of yield, pace and need. */
const tellYield = 0.03;
const tellPace = 0.01;
const tellNeed = 0.02;
/** Days over which the needs are compared. */
const needDays = 28;

export function reasonsOfChange(then: Situation, now: Situation, since: Day): Said[] {
  const strains = [...now.model.strains].flatMap(([key, { facts }]) => [
    ...beliefReasons(then, now, key, facts.name),
    ...needReasons(then, now, key, facts.name),
  ]);
  return [...strains, ...cupReasons(now, since), ...settingReasons(then, now)];
}

function beliefReasons(then: Situation, now: Situation, strain: string, name: string): Said[] {
  const before = then.beliefs.byStrain.get(strain);
  const after = now.beliefs.byStrain.get(strain);
  if (!before || !after) return [];
  const yields = Math.exp(after.logYield.mean - before.logYield.mean) - 1;
  const pace = Math.exp(after.logPace.mean - before.logPace.mean) - 1;
  const reasons: Said[] = [];
  if (Math.abs(yields) >= tellYield) {
    const percent = Math.round(Math.abs(yields) * 100);
    reasons.push(
      yields > 0
        ? said`Cups of ${name} are now believed to give ${percent} % more than before.`
        : said`Cups of ${name} are now believed to give ${percent} % less than before.`,
    );
  }
  if (Math.abs(pace) >= tellPace) {
    const percent = Math.round(Math.abs(pace) * 1000) / 10;
    reasons.push(
      pace > 0
        ? said`Cups of ${name} are now believed to be ${percent} % quicker than before.`
        : said`Cups of ${name} are now believed to be ${percent} % slower than before.`,
    );
  }
  return reasons;
}

/** The need of the same days, as it was and as it is. */
function needReasons(then: Situation, now: Situation, strain: string, name: string): Said[] {
  const shift = now.model.today - then.model.today;
  const sum = (at: Situation, from: number) => {
    const flies = at.problem.strains.find((s) => s.strain === strain);
    if (!flies) return 0;
    let total = 0;
    for (let t = from; t < from + needDays; t++) {
      total += (flies.wantedFlies[t] ?? 0) + (flies.orderedFlies[t] ?? 0);
    }
    return total;
  };
  const [before, after] = [sum(then, shift), sum(now, 0)];
  if (Math.abs(after - before) < tellNeed * Math.max(1, before)) return [];
  return [said`The coming four weeks want ${Math.round(after)} flies of ${name} instead of ${Math.round(before)}.`];
}

/** Cups that ended, came or were started after the earlier plan. */
function cupReasons({ model }: Situation, since: Day): Said[] {
  const after = (day: Day) => day > since && dayNumber(day) <= model.today;
  const ended = model.facts.cultures.filter((c) => c.ended && after(c.ended.on));
  const failed = ended.filter((c) => !['spent', 'given', 'other'].includes(c.ended?.reason ?? ''));
  const gone = ended.filter((c) => !failed.includes(c));
  const begun = model.facts.cultures.filter((c) => after(c.on));
  return [
    ...(failed.length > 0 ? [said`Lost: ${{ list: failed.map(labelOf) }}.`] : []),
    ...(gone.length > 0 ? [said`Ended: ${{ list: gone.map(labelOf) }}.`] : []),
    ...(begun.length > 0 ? [said`New cups: ${{ list: begun.map(labelOf) }}.`] : []),
  ];
}

function labelOf({ label }: CultureFacts): string {
  return label;
}

/** Rules and days of work that were changed. */
function settingReasons(then: Situation, now: Situation): Said[] {
  const reasons: Said[] = [];
  const [was, is] = [then.model.facts.household, now.model.facts.household];
  if (was.serviceLevel !== is.serviceLevel) {
    reasons.push(said`Every day is now to be ${Math.round(is.serviceLevel * 10_000) / 100} % safe.`);
  }
  if (was.workWeekdays.join() !== is.workWeekdays.join())
    reasons.push(said`The weekdays with time for fly work changed.`);
  if (then.model.facts.absences.length !== now.model.facts.absences.length) reasons.push(said`Days away were changed.`);
  if (
    JSON.stringify(then.model.facts.places.map((p) => p.expected)) !==
    JSON.stringify(now.model.facts.places.map((p) => p.expected))
  ) {
    reasons.push(said`The expected temperature of a place was changed.`);
  }
  return reasons;
}
