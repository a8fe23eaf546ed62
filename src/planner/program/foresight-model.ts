/**
 * One world as a linear program: the household's yield, pace and need are known beforehand, and the living
 * cups' whole course; what sessions and cups draw apart is not, so those to be started count with their
 * mean. A policy can't choose cups by luck they have not shown, and every constraint is linear, so the mean
 * of any policy's flows over that luck is feasible here. Variables: cups started on each work day and
 * delivered on each delivery day, flies missing on each day, flies kept until the next.
 */
import type { CountedCups } from './counted-cups.ts';
import { rationBounds, rationPrices, rationsOf, rationTerms } from './ration-terms.ts';
import { cumulativeAt, expectedEmergence } from '../forecast/curve-table.ts';
import type { PreparedHousehold, PreparedStrain } from '../forecast/prepared-household.ts';
import { type HouseholdDraw, householdDraw, worldKey } from '../forecast/world-draws.ts';

export interface ForesightOptions {
  seed: number;
  world: number;
  /** Cups that one short day is worth. */
  shortDayPrice: number;
  /** Days that are judged; short days before it cost nothing. */
  judgedFrom: number;
  /** What each cup counts; 1 unless given. */
  counted?: CountedCups | undefined;
}

interface Cup {
  variable: string;
  counts: number;
  most: number;
  founders: number;
  /** Day from which it is here, and flies that emerge on each day from then on. */
  day: number;
  flies: { day: number; amount: number }[];
}

/** CPLEX-LP text: least cups plus priced short days of one strain in one world. */
export function foresightModel(
  household: PreparedHousehold,
  prepared: PreparedStrain,
  options: ForesightOptions,
): string {
  const { problem } = household;
  const { shortDayPrice, judgedFrom } = options;
  const key = worldKey(options.seed, options.world, prepared.index);
  const luck = householdDraw(prepared.strain.uncertainty, prepared.strain.needLogSd, key, options.world);
  const { counted } = options;
  const cups = [...startedCups(household, prepared, luck, counted), ...boughtCups(household, prepared, luck, counted)];
  const terms: string[][] = Array.from({ length: problem.days }, () => []);
  for (const cup of cups) {
    if (cup.founders > 0) terms[cup.day]?.push(`+ ${cup.founders} ${cup.variable}`);
    for (const { day, amount } of cup.flies) terms[day]?.push(`- ${amount.toFixed(3)} ${cup.variable}`);
  }
  const supply = existingFlies(prepared, options.world, problem.days);
  addAwaited(prepared, luck, supply);
  const { days } = problem;
  const rations = rationsOf(prepared, options.world, luck.needFactor, days);
  const rows = Array.from({ length: days }, (_, t) => {
    const before = t > 0 ? `- ${prepared.strain.adultDailySurvival} s_${t - 1} ` : '';
    const { taken, need } = rationTerms(rations, t);
    const right = ((supply[t] as number) - need).toFixed(3);
    return `f_${t}: s_${t} ${taken} ${before}${(terms[t] as string[]).join(' ')} = ${right}`;
  });
  const prices = rationPrices(rations, days, judgedFrom, shortDayPrice);
  const bounds = [...cups.map((cup) => ` 0 <= ${cup.variable} <= ${cup.most}`), ...rationBounds(rations, days)];
  const objective = [...cups.map(({ counts, variable }) => `${counts} ${variable}`), ...prices].join(' + ');
  return `Minimize\n obj: ${objective}\nSubject To\n ${rows.join('\n ')}\nBounds\n${bounds.join('\n')}\nEnd\n`;
}

function startedCups(
  household: PreparedHousehold,
  prepared: PreparedStrain,
  luck: HouseholdDraw,
  counted?: CountedCups,
): Cup[] {
  const { problem } = household;
  const cups: Cup[] = [];
  for (let t = 0; t < problem.days; t++) {
    if (!problem.workDays[t]) continue;
    const flies = expectedFlies(prepared, luck, { curve: t, age: 0, from: t, arriving: 1 }, problem.days);
    cups.push({
      variable: `x_${t}`,
      counts: counted?.started[t] ?? 1,
      most: problem.maxCupsPerSession,
      founders: prepared.strain.foundersPerCup,
      day: t,
      flies,
    });
  }
  return cups;
}

function boughtCups(
  household: PreparedHousehold,
  prepared: PreparedStrain,
  luck: HouseholdDraw,
  counted?: CountedCups,
): Cup[] {
  const { problem } = household;
  const { curves, strain } = prepared;
  const arriving = 1 - prepared.arrivalLossShare;
  const kinds = [
    { name: 'p', curve: curves.producing, age: strain.bought.producingAgeDays, counts: counted?.producing },
    { name: 'y', curve: curves.young, age: strain.bought.youngAgeDays, counts: counted?.young },
  ];
  const cups: Cup[] = [];
  for (let t = Math.max(1, problem.purchase.leadDays); t < problem.days; t++) {
    if (!problem.purchase.deliveryDays[t]) continue;
    for (const { name, curve, age, counts } of kinds) {
      const flies = expectedFlies(prepared, luck, { curve, age, from: t, arriving }, problem.days);
      cups.push({ variable: `${name}_${t}`, counts: counts?.[t] ?? 1, most: 1000, founders: 0, day: t, flies });
    }
  }
  return cups;
}

/** Flies expected of a cup on each day, given the household's luck, over what cups and sessions draw apart. */
function expectedFlies(
  prepared: PreparedStrain,
  luck: HouseholdDraw,
  source: { curve: number; age: number; from: number; arriving: number },
  days: number,
): { day: number; amount: number }[] {
  const { curves, strain } = prepared;
  const factor = source.arriving * Math.exp(luck.logYield);
  const flies: { day: number; amount: number }[] = [];
  const last = Math.min(curves.spentAge[source.curve] as number, curves.stride - 1);
  for (let a = source.age; a <= last && source.from + a - source.age < days; a++) {
    const amount = factor * expectedEmergence(curves, strain, source.curve, a, source.age, Math.exp(luck.logPace));
    if (amount > 0.001) flies.push({ day: source.from + a - source.age, amount });
  }
  return flies;
}

/** Flies of cups that were bought before and are on their way. */
function addAwaited(prepared: PreparedStrain, luck: HouseholdDraw, supply: Float64Array): void {
  const { curves, strain, arrivalLossShare } = prepared;
  for (const { kind, cups, arrivalDay } of strain.awaited ?? []) {
    const age = kind === 'young' ? strain.bought.youngAgeDays : strain.bought.producingAgeDays;
    const source = { curve: curves[kind], age, from: arrivalDay, arriving: 1 - arrivalLossShare };
    for (const { day, amount } of expectedFlies(prepared, luck, source, supply.length)) {
      supply[day] = (supply[day] as number) + cups * amount;
    }
  }
}

function existingFlies(prepared: PreparedStrain, world: number, days: number): Float64Array {
  const { curves, strain } = prepared;
  const flies = new Float64Array(days);
  strain.existing.forEach((cup, k) => {
    const at = (values: Float64Array) => values[world % values.length] as number;
    const curve = curves.firstExisting + k;
    const pace = Math.exp(at(cup.draws.logPace));
    const factor = Math.exp(at(cup.draws.logYield));
    const last = Math.max(cup.ageDays, curves.spentAge[curve] as number);
    flies[0] = (flies[0] as number) + at(cup.draws.fliesNow);
    for (let a = cup.ageDays; a <= last && a < at(cup.draws.endAge) && a - cup.ageDays < days; a++) {
      const amount = cumulativeAt(curves, curve, (a + 1) * pace) - cumulativeAt(curves, curve, a * pace);
      flies[a - cup.ageDays] = (flies[a - cup.ageDays] as number) + amount * factor;
    }
  });
  return flies;
}
