/** Shapes of what is said about animals and their rations; every door gives them alike. */
import { z } from 'zod';
import { weekdays } from '../../foundation/index.ts';
import { isoDay } from '../answers.ts';

const amount = z.number().min(0);
const range = z.object({ low: amount, middle: amount, high: amount });
const reckoning = z.object({ mgPerDay: range, fliesPerDay: range });

export const starterRation = z.object({
  animal: z.string(),
  name: z.string(),
  taxon: z.string(),
  massG: z.object({ low: amount, high: amount }),
  /** Flies of the kind `fly` for one animal at a feeding. */
  fliesPerFeeding: z.object({ low: amount, high: amount }),
  fly: z.string(),
  everyDays: z.object({ low: amount, high: amount }),
  canWaitDays: amount,
  /** What comes after this stage, and how long it lasts; null when it does not end. */
  next: z.string().nullable(),
  stageDays: z.object({ low: amount, high: amount }).nullable(),
  source: z.string(),
  /** `read` in a source, or `memory`: keeper practice without one. */
  status: z.string(),
  note: z.string(),
});

export const rationAnswer = z.object({
  starter: starterRation,
  massG: amount,
  temperatureC: z.number(),
  /** Fresh mass of one fly as the cups now give it. */
  flyMassMg: range,
  /** One animal, by practice. */
  practice: reckoning,
  /** One animal, by energy; null where no equation is published for it. */
  energy: reckoning
    .extend({
      joulePerDay: range,
      byEquation: z.array(
        z.object({ equation: z.string(), kind: z.string(), joulePerDay: amount, source: z.string() }),
      ),
    })
    .nullable(),
  /** Energy's middle over practice's. */
  ratio: amount.nullable(),
  verdict: z.string(),
  /** Flies a day for the whole group by practice, and by energy. */
  groupFliesPerDay: z.object({ practice: range, energy: range.nullable() }),
  cautions: z.array(z.string()),
});

const dateRange = z.object({ earliest: isoDay, middle: isoDay, latest: isoDay });
const schedule = z.array(z.object({ supplement: z.string(), timesPerWeek: z.int() }));

/** What one animal is fed at a feeding now, and why that is other than written. */
const rationNow = z.object({
  /** Flies of ordinary size, as the keeper wrote. */
  writtenFlies: amount,
  /** Flies of the size that the cups now give; ends by appetite and size. */
  flies: range,
  /** The same need in fresh milligrams. */
  mg: range,
  /** The keeper wants it as written. */
  asWritten: z.boolean(),
  /** Learned from left-overs and from what was given; 1 = as written. */
  learnedFactor: amount,
  givenFactor: amount,
  /** Feedings on which left-overs were noted, and those with something left. */
  noted: z.int(),
  withLeftOvers: z.int(),
  /** Flies as they are for one of ordinary size. */
  sizeFactor: amount,
  flyMassMg: range,
  ordinaryFlyMg: amount,
  flySizeFrom: z.enum(['weighed', 'crowding', 'books']),
  why: z.array(z.string()),
});

const stageAhead = z.object({
  animal: z.string(),
  name: z.string(),
  /** By the books, from the day the group was written down as its present kind. */
  begins: dateRange,
  /** Its time has come and nobody wrote it. */
  overdue: z.boolean(),
  fly: z.string().nullable(),
  /** Strain of the household that will be fed; null for larger prey. */
  strain: z.string().nullable(),
  /** False when the household keeps no strain of that fly. */
  flyIsKept: z.boolean(),
  /** By the books, and as planned for one animal in proportion to the ration now. */
  fliesPerFeeding: z.object({ low: amount, high: amount }).nullable(),
  planned: amount.nullable(),
});

const weight = z.object({
  verdict: z.enum(['too few weighings', 'enough', 'watch', 'too little', 'too much']),
  changePerDay: z.number().nullable(),
  standardError: amount.nullable(),
  suddenLoss: amount.nullable(),
  lineMassG: amount.nullable(),
  why: z.string(),
});

const groupNeed = z.object({
  group: z.string(),
  name: z.string(),
  animal: z.string().nullable(),
  /** The books' kind that it stands for; null for others. */
  kind: z.string().nullable(),
  count: amount,
  strain: z.string().nullable(),
  feedingWeekdays: z.array(z.enum(weekdays)),
  temperatureC: z.number().nullable(),
  /** Share of the diet that is flies. */
  flyShare: z.number().min(0).max(1),
  canWaitDays: amount,
  /** `written` by the keeper, usual for its `kind`, or the `usual` day (common practice, no source). */
  canWaitFrom: z.enum(['written', 'kind', 'usual']),
  ration: rationNow.nullable(),
  stages: z.array(stageAhead),
  /** Days near the next moult. */
  moult: z.object({ from: isoDay, until: isoDay, isNear: z.boolean() }).nullable(),
  /** The next hatch or arrival that is not certain. */
  arrival: z.object({ earliest: isoDay, latest: isoDay, countLow: amount, countHigh: amount }).nullable(),
  lastFedOn: isoDay.nullable(),
  /** Days that a feeding can still be put off; below 0 when it has waited too long. */
  slackDays: z.number(),
  /** Mean need of whole weeks from `on`, by strain. */
  byStrain: z.array(z.object({ strain: z.string(), weeks: z.array(amount) })),
  fliesByDay: z.array(amount),
  sdByDay: z.array(amount),
  /** The same in fresh milligrams at the cups' present fly mass. */
  mgByDay: z.array(amount),
  /** Flies that the whole group eats at a feeding, learned from left-overs; null without any. */
  appetite: z.object({ p05: amount, p50: amount, p95: amount, feedings: z.int() }).nullable(),
  /** Mean mass of one animal, oldest first. */
  weighings: z.array(z.object({ on: isoDay, massG: amount, animals: z.int() })),
  /** Shares of its mass that the kind gains a day; null when nobody knows. */
  expectedGain: z.object({ low: amount, high: amount }).nullable(),
  weight: weight.nullable(),
  /** What fits the mouth, by the body length measured last. */
  prey: z
    .object({
      lengthMm: amount,
      limitMm: amount,
      fly: z.string().nullable(),
      verdict: z.enum(['too small for adult flies', 'flies', 'larger prey beside flies']),
    })
    .nullable(),
  comparison: z
    .object({
      verdict: z.string(),
      ratio: amount.nullable(),
      practiceFliesPerDay: range,
      energyFliesPerDay: range.nullable(),
      practiceMgPerDay: range,
      energyMgPerDay: range.nullable(),
    })
    .nullable(),
  /** Its own schedule of supplements; null where the household's holds. */
  dusting: schedule.nullable(),
});

const quality = z.object({
  calciumToPhosphorus: amount.nullable(),
  /** When the dusted flies are eaten only after `lateHours`. */
  lateCalciumToPhosphorus: amount.nullable(),
  lateHours: amount,
  verdict: z.string(),
  proteinMg: amount,
  fatMg: amount,
  /** Calcium carbonate on 100 flies for 1.5 : 1, mg. */
  carbonateMgPer100Flies: amount,
});

export const animalsAnswer = z.object({
  on: isoDay,
  days: z.int(),
  strains: z.array(
    z.object({
      strain: z.string(),
      wantedFliesByDay: z.array(amount),
      sdByDay: z.array(amount),
      /** 5 and 95 % of the day's need over hatches, moults and appetites. */
      lowByDay: z.array(amount),
      highByDay: z.array(amount),
      /** Whole weeks from `on`: the sum, and its 5 and 95 %. */
      weeks: z.array(z.object({ flies: amount, low: amount, high: amount })),
      flyMassMg: range,
    }),
  ),
  groups: z.array(groupNeed),
  /** The coming week's feedings, in order. */
  week: z.array(
    z.object({
      date: isoDay,
      group: z.string(),
      name: z.string(),
      strain: z.string(),
      flies: amount,
      /** As many flies by their size now; and the need in milligrams. */
      fliesRange: z.object({ low: amount, high: amount }),
      mg: amount,
      supplements: z.array(z.string()),
      /** Near a moult: feed only those that hunt, and take left-overs out. */
      nearMoult: z.boolean(),
      /** Written down as fed. */
      fed: z.boolean(),
    }),
  ),
  /** Schedule of the household. */
  dusting: schedule,
  /** Of the week's flies, with the dust of the plan; null when nothing is fed. */
  quality: quality.nullable(),
  /** Of each group by itself. */
  qualityByGroup: z.array(z.object({ group: z.string(), calciumToPhosphorus: amount.nullable(), verdict: z.string() })),
  /** Of the seven days past, where it was written what the flies were dusted with; null where it was not. */
  qualityAsFed: z.object({ feedings: z.int(), calciumToPhosphorus: amount.nullable() }).nullable(),
  /** How long dust stays on flies, h. */
  dustStaysHours: z.object({ low: amount, middle: amount, high: amount }),
  warnings: z.array(
    z.object({
      group: z.string(),
      kind: z.enum(['kind', 'weight', 'waiting', 'stage', 'hatch', 'calcium']),
      text: z.string(),
    }),
  ),
  cautions: z.array(z.string()),
});

export const hatchRange = z.object({
  species: z.string(),
  name: z.string(),
  youngLow: amount,
  youngHigh: amount,
  source: z.string(),
  /** `read` in a source, or `memory`. */
  status: z.string(),
  note: z.string(),
});

export const flyPotAnswer = z.object({
  flies: amount,
  sd: amount,
  band: z.object({ p05: amount, p50: amount, p95: amount }),
  mainDoubt: z.enum(['the scale', 'the mean mass of a fly', 'the single flies']),
});

export type HatchRange = z.infer<typeof hatchRange>;
export type StarterRation = z.infer<typeof starterRation>;
export type RationAnswer = z.infer<typeof rationAnswer>;
export type AnimalsAnswer = z.infer<typeof animalsAnswer>;
