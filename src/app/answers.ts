/**
 * The shapes of the answers that the page, the command line and HTTP give alike. The checks below are
 * the one description of them: types, JSON Schema and OpenAPI are made from here.
 */
import { z } from 'zod';
import { offCourseAnswer } from './off-course-answer.ts';

export const isoDay = z
  .string()
  .regex(/^\d{4}-\d{2}-\d{2}$/)
  .describe('Calendar day, ISO 8601');
const count = z.number().min(0);
const share = z.number().min(0).max(1);

export const band = z.object({ p05: count, p50: count, p95: count }).describe('Middle and 5 to 95 % band');
export const dayBand = z.object({ p05: isoDay, p50: isoDay, p95: isoDay });

export const forecastDay = z.object({
  date: isoDay,
  strain: z.string().optional(),
  wantedFlies: count,
  emergingFlies: band,
  /** What can be harvested that day, before feeding. */
  onHandFlies: band,
  serviceLevel: share,
  /** Flies missing on the days that fall short, mean. */
  meanShortfallFlies: count,
});

export const forecastAnswer = z.object({
  on: isoDay,
  seed: z.int(),
  scenarios: z.int(),
  days: z.array(forecastDay),
  firstRiskyDay: isoDay.nullable(),
  chanceOfNoShortfall: share,
  /** Longest run of short days within a scenario that has any: mean and 95 % quantile, days. */
  shortfallRunDays: z.object({ mean: count, p95: count }),
  serviceLevelAsked: share,
  serviceStandardError: share,
});

export const jobKinds = [
  'start',
  'feed',
  'look',
  'discard',
  'mix',
  'buy',
  'receive',
  'move',
  'stretch',
  'wash',
  'shop',
] as const;

export const job = z.object({
  /** Stable for the same job on the same day, so that it can be ticked off. */
  id: z.string(),
  date: isoDay,
  kind: z.enum(jobKinds),
  strain: z.string().nullable(),
  cultures: z.array(z.string()).optional(),
  fromCultures: z.array(z.string()).optional(),
  group: z.string().optional(),
  /** Where cups are to be carried. */
  place: z.string().optional(),
  flies: z.number().optional(),
  /** Of a feeding: the need in fresh milligrams, and as many flies by their size now. */
  wantedMg: z.number().optional(),
  fliesRange: z.object({ low: count, high: count }).optional(),
  /** What the flies are dusted with. */
  supplements: z.array(z.string()).optional(),
  cups: z.number().optional(),
  /** Of cups to buy or receive: already giving flies, or young ones for founders. */
  boughtStage: z.enum(['producing', 'young']).optional(),
  /** Day on which what is ordered arrives. */
  arrives: isoDay.optional(),
  /** Key of the purchase that a parcel belongs to. */
  purchase: z.string().optional(),
  /** One plain sentence with its numbers. */
  why: z.string(),
  /** `firm` jobs stand unless something is seen; `expected` ones will be decided again. */
  firmness: z.enum(['firm', 'expected']),
});

export const spanChance = z.object({ weeks: count, chance: share });

/** How safely a group is fed: a ration that is put off no longer than the group can wait is not missed. */
export const groupService = z.object({
  group: z.string(),
  name: z.string(),
  strain: z.string(),
  canWaitDays: count,
  worstDayServiceLevel: share,
  worstDay: isoDay.nullable(),
  expectedShortfallDays: count,
  noShortfall: z.array(spanChance),
});

export const planAnswer = z.object({
  on: isoDay,
  seed: z.int(),
  scenarios: z.int(),
  weeks: z.int(),
  jobs: z.array(job),
  culturesPlanned: count,
  boughtCultures: count,
  sessionsPlanned: count,
  /** No plan can do with fewer; weak, because it knows neither deaths nor whole cups. */
  lowerBoundCultures: count,
  /** Cups, bought ones too, that the same rules would need were nothing uncertain: the rest is the price of not knowing. */
  culturesUnderCertainty: count.nullable(),
  worstDayServiceLevel: share,
  worstDay: isoDay.nullable(),
  /** What stands in the way of any plan, in plain sentences. */
  warnings: z.array(z.string()),
  /** First day on which flies of cups started at home from now on could emerge, by strain. */
  homeGrownFrom: z.record(z.string(), isoDay.nullable()),
  expectedShortfallDays: count,
  chanceOfNoShortfall: share,
  /** The same over 13 and 52 weeks, where the plan is as long, and over the whole plan. */
  noShortfall: z.array(spanChance),
  /** Of a day that falls short: the share of its flies that is missing, mean; and how many days it lasts. */
  shortfall: z.object({ meanMissingShare: share, runDays: z.object({ mean: count, p95: count }) }),
  groups: z.array(groupService),
  serviceLevelByDay: z.array(z.object({ date: isoDay, strain: z.string(), serviceLevel: share })),
});

export const cultureToday = z.object({
  id: z.string(),
  label: z.string(),
  strain: z.string(),
  place: z.string().nullable(),
  ageDays: z.int(),
  stage: z.enum(['eggs', 'larvae', 'pupae', 'emerging', 'peak', 'declining', 'spent']),
  nextEvents: z.array(z.object({ event: z.string(), p05: isoDay, p50: isoDay, p95: isoDay })),
  onHandFlies: band,
  spentOn: isoDay,
  warnings: z.array(z.string()),
  /** Set when what was seen lies outside the cup's band. */
  offCourse: offCourseAnswer.nullable(),
});

export const todayAnswer = z.object({
  on: isoDay,
  seed: z.int(),
  household: z.string(),
  jobs: z.array(job),
  soon: z.array(job),
  cultures: z.array(cultureToday),
  wantedFlies: z.record(z.string(), count),
  onHandFlies: z.record(z.string(), band),
  /** Of the household as a whole: places too warm or too cold, and what that does to cups. */
  warnings: z.array(z.string()),
  problems: z.array(z.object({ where: z.string(), found: z.string(), expected: z.string() })),
});

export const lifecycleAnswer = z.object({
  strain: z.string(),
  /** Mean over the first 30 days when a temperature file was given. */
  temperatureC: z.number(),
  eggToAdultDays: z.number(),
  stages: z.array(z.object({ stage: z.string(), days: z.number() })),
  firstEmergenceDay: z.number(),
  peakDay: z.number(),
  spentDay: z.number(),
  founderFromDay: z.number(),
  founderUntilDay: z.number(),
  /** Thrown out at this age whatever it still gives; mites from the start are trouble at the other, if so soon. */
  throwOutDay: z.number(),
  mitesTroubleDay: z.number().nullable(),
  bestFounders: z.int(),
  /** Flies less founders for each number of founders tried. */
  fliesByFounders: z.array(z.object({ founders: z.int(), netFlies: z.number() })),
  adultsEmerged: band,
  /** The part of that band that chance among the founders makes. */
  chanceAlone: band,
  /** Mean fresh mass of all that emerge, mg; null when none do. */
  flyMassMg: z.number().nullable(),
  emergedByDay: z.array(z.number()),
  femalesEmergedByDay: z.array(z.number()),
  malesEmergedByDay: z.array(z.number()),
  /** Hours that males emerge after females, in the mean; null when none emerge. */
  malesLaterHours: z.number().nullable(),
  /** Of a day's flies, the share that emerges in each hour of the day; null when it was not said when it gets light. */
  emergedShareByHour: z.array(z.number()).nullable(),
  onHandByDay: z.array(z.number()),
  harvestedByDay: z.array(z.number()),
  larvaeByDay: z.array(z.number()),
  pupaeByDay: z.array(z.number()),
  mediumLeftByDay: z.array(z.number()),
  eggsByDay: z.array(z.number()),
  /** Chance of failing on the day, by cause, for a cup that still stands; and of standing at its end. */
  failureByDay: z.object({
    mould: z.array(z.number()),
    mites: z.array(z.number()),
    other: z.array(z.number()),
    standing: z.array(z.number()),
  }),
});

export const crossAnswer = z.object({
  generations: z.array(
    z.object({
      /** 1 for the offspring of the two parents given. */
      n: z.int().min(1),
      /** Flies that can fly, of all that emerge. */
      wingedShare: share,
      phenotypes: z.array(z.object({ phenotype: z.string(), share })),
      genotypes: z.array(z.object({ genotype: z.string(), share })),
    }),
  ),
  /** False when the shares are means of simulated lines; then `spread` has their error. */
  exact: z.boolean(),
  spread: z
    .array(
      z.object({
        n: z.int().min(1),
        wingedShare: z.object({ mean: share, standardError: z.number().min(0), band }),
        allFlightlessShare: share,
        allWingedShare: share,
        lostLinesShare: share,
      }),
    )
    .optional(),
});

export type ForecastAnswer = z.infer<typeof forecastAnswer>;
export type PlanAnswer = z.infer<typeof planAnswer>;
export type TodayAnswer = z.infer<typeof todayAnswer>;
export type LifecycleAnswer = z.infer<typeof lifecycleAnswer>;
export type CrossAnswer = z.infer<typeof crossAnswer>;
export type Job = z.infer<typeof job>;
export type CultureToday = z.infer<typeof cultureToday>;
