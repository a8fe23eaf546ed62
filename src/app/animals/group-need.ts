/** One group: its need by day with its reasons, patience, stages, appetite and weight. */
import { type Range, rangeOf, wantedFlies, type WeightCheck } from '../../animals/index.ts';
import { type Day, dayFromNumber, dayNumber, type Said } from '../../foundation/index.ts';
import type { Facts, GroupFacts, GroupPeriod } from '../../logbook/index.ts';
import { ration } from '../ration.ts';
import type { AnimalsAnswer } from './animal-answers.ts';
import { kindOf } from './animal-kinds.ts';
import { type FeedingNow, patienceOf, type RationNow } from './feeding-now.ts';
import { periodOn } from './group-periods.ts';
import { speciesOf, type StageToCome } from './growth-ahead.ts';
import { nearMoult } from './moult.ts';
import { overdueDays } from './overdue.ts';
import { rationReasons } from './ration-reasons.ts';
import { expectedGain, preyOf, weighingsOf, weightOf } from './weights.ts';

type Told = AnimalsAnswer['groups'][number];
/** A group's need whose reasons are not in any language yet. */
export type GroupNeed = Omit<Told, 'ration' | 'weight'> & {
  ration: (Omit<NonNullable<Told['ration']>, 'why'> & { why: Said[] }) | null;
  weight: WeightCheck | null;
};

/** @param facts as written, with what `now` made of them. */
export function groupNeed(
  facts: Facts,
  now: FeedingNow,
  group: GroupFacts,
  on: Day,
  days: number,
  flyMassMg: ReadonlyMap<string, Range>,
): GroupNeed {
  const today = dayNumber(on);
  const period = periodOn(group, today);
  const held = period ?? group.periods.find(({ from }) => from > on) ?? null;
  const rationHeld = now.rations.get(group.group) ?? null;
  const kind = kindOf(held?.animal ?? group.animal);
  const canWaitDays = held ? patienceOf(held) : 0;
  return {
    group: group.group,
    name: group.name,
    animal: held?.animal ?? group.animal,
    kind: kind?.animal ?? null,
    count: period?.count ?? 0,
    strain: held?.strain ?? null,
    feedingWeekdays: held?.feedingWeekdays ?? [],
    temperatureC: held?.temperatureC ?? null,
    flyShare: held?.flyShare ?? 1,
    canWaitDays,
    canWaitFrom: held?.canWaitIsWritten ? 'written' : kind ? 'kind' : 'usual',
    ration: rationHeld && held ? rationOf(held, rationHeld) : null,
    stages: rationHeld && (held?.count ?? 0) > 0 ? rationHeld.stages.map((one) => stageOf(facts, one, today)) : [],
    moult: rationHeld ? nearMoult(rationHeld, on) : null,
    arrival: group.periods.find(({ arrival }) => arrival && arrival.latest >= on)?.arrival ?? null,
    lastFedOn: facts.feedings.findLast((one) => one.group === group.group && one.on <= on)?.on ?? null,
    slackDays: canWaitDays - overdueDays(facts, group, on),
    ...needByDay(now, group.group, today, days, flyMassMg),
    appetite: period && rationHeld ? appetiteOf(period, rationHeld) : null,
    weighings: weighingsOf(facts, group, on),
    expectedGain: expectedGain(kind, held?.temperatureC ?? null),
    weight: weightOf(facts, group, on),
    prey: preyOf(facts, group, on),
    comparison: period ? comparisonOf(facts, group, period, on) : null,
    dusting: group.dusting,
  };
}

function rationOf(period: GroupPeriod, { learned, sizeFactor, flySize }: RationNow): GroupNeed['ration'] {
  const written = period.fliesPerFeeding;
  const ordinaryMg = flySize?.ordinaryMg ?? 0;
  const eaten = written * learned.factor;
  const spread = Math.exp(1.645 * learned.logSd);
  const mg = rangeOf((eaten * ordinaryMg) / spread, eaten * ordinaryMg * spread);
  const flies = eaten * sizeFactor;
  return {
    writtenFlies: written,
    flies:
      flySize && flySize.nowMg.low > 0 && !period.keepRation
        ? { low: mg.low / flySize.nowMg.high, middle: flies, high: mg.high / flySize.nowMg.low }
        : { low: written, middle: flies, high: written },
    mg: { low: mg.low, middle: eaten * ordinaryMg, high: mg.high },
    asWritten: period.keepRation,
    learnedFactor: learned.factor,
    givenFactor: learned.given,
    noted: learned.noted,
    withLeftOvers: learned.withLeftOvers,
    sizeFactor,
    flyMassMg: flySize?.nowMg ?? rangeOf(0, 0),
    ordinaryFlyMg: ordinaryMg,
    flySizeFrom: flySize?.from ?? 'books',
    why: rationReasons(period, { learned, sizeFactor, flySize }),
  };
}

function stageOf(facts: Facts, stage: StageToCome, today: number): GroupNeed['stages'][number] {
  const dates = ({ earliest, middle, latest }: StageToCome['begins']) => ({
    earliest: dayFromNumber(earliest),
    middle: dayFromNumber(middle),
    latest: dayFromNumber(latest),
  });
  const { row } = stage;
  return {
    animal: stage.animal,
    name: stage.name,
    begins: dates(stage.books),
    overdue: stage.books.latest < today,
    fly: row?.fly ?? null,
    strain: row ? stage.strain : null,
    flyIsKept: row === null || speciesOf(facts, stage.strain) === row.fly,
    fliesPerFeeding: row && { low: row.fliesLow, high: row.fliesHigh },
    planned: row ? stage.fliesPerFeeding : null,
  };
}

function needByDay(
  { groups }: FeedingNow,
  key: string,
  fromDay: number,
  days: number,
  flyMassMg: ReadonlyMap<string, Range>,
): Pick<GroupNeed, 'byStrain' | 'fliesByDay' | 'sdByDay' | 'mgByDay'> {
  const needs = wantedFlies({ groups: groups.filter(({ group }) => group === key), fromDay, days });
  const [fliesByDay, sdByDay, mgByDay] = [0, 1, 2].map(() => Array.from({ length: days }, () => 0)) as [
    number[],
    number[],
    number[],
  ];
  for (const [strain, { flies, sd }] of needs) {
    const mg = flyMassMg.get(strain)?.middle ?? 0;
    flies.forEach((wanted, i) => {
      fliesByDay[i] = (fliesByDay[i] as number) + wanted;
      sdByDay[i] = Math.hypot(sdByDay[i] as number, sd[i] as number);
      mgByDay[i] = (mgByDay[i] as number) + wanted * mg;
    });
  }
  const byStrain = [...needs].map(([strain, { flies }]) => ({ strain, weeks: weeksOf(flies) }));
  return { byStrain, fliesByDay, sdByDay, mgByDay };
}

function weeksOf(flies: Float64Array): number[] {
  return Array.from({ length: Math.floor(flies.length / 7) }, (_, week) =>
    flies.subarray(7 * week, 7 * week + 7).reduce((sum, wanted) => sum + wanted, 0),
  );
}

function appetiteOf({ count, fliesPerFeeding }: GroupPeriod, { learned, sizeFactor }: RationNow) {
  if (!learned.appetite) return null;
  const ration = count * fliesPerFeeding * sizeFactor;
  const { p05, p50, p95 } = learned.appetite;
  return { p05: p05 * ration, p50: p50 * ration, p95: p95 * ration, feedings: learned.noted };
}

function comparisonOf(
  facts: Facts,
  { group }: GroupFacts,
  { animal, massG, strain, temperatureC, flyShare }: GroupPeriod,
  on: Day,
): GroupNeed['comparison'] {
  if (animal === null || !kindOf(animal)) return null;
  const weighed = facts.weighings.findLast((one) => one.group === group && one.massG !== null && one.on <= on)?.massG;
  const mass = weighed ?? massG;
  const result = ration(facts, {
    animal,
    on,
    strain,
    flyShare,
    ...(mass === null ? {} : { massG: mass }),
    ...(temperatureC === null ? {} : { temperatureC }),
  });
  if (!result.ok) return null;
  const { verdict, ratio, practice, energy } = result.value;
  return {
    verdict,
    ratio,
    practiceFliesPerDay: practice.fliesPerDay,
    energyFliesPerDay: energy?.fliesPerDay ?? null,
    practiceMgPerDay: practice.mgPerDay,
    energyMgPerDay: energy?.mgPerDay ?? null,
  };
}
