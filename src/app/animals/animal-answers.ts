/** Shapes of what is said about animals and their rations; every door gives them alike. */
import { z } from 'zod';
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

const groupNeed = z.object({
  group: z.string(),
  name: z.string(),
  animal: z.string().nullable(),
  count: amount,
  strain: z.string().nullable(),
  canWaitDays: amount,
  /** The stages to come by the books, counted from the day the group was written down as this kind. */
  stages: z.array(
    z.object({
      animal: z.string(),
      name: z.string(),
      begins: z.object({ earliest: isoDay, middle: isoDay, latest: isoDay }),
      fly: z.string().nullable(),
      fliesPerFeeding: z.object({ low: amount, high: amount }).nullable(),
    }),
  ),
  /** The next hatch or arrival that is not certain. */
  arrival: z.object({ earliest: isoDay, latest: isoDay, countLow: amount, countHigh: amount }).nullable(),
  lastFedOn: isoDay.nullable(),
  /** Days that a feeding can still be put off; below 0 when it has waited too long. */
  slackDays: z.number(),
  fliesByDay: z.array(amount),
  /** The same in fresh milligrams at the cups' present fly mass. */
  mgByDay: z.array(amount),
  /** Flies that the whole group eats at a feeding, learned from left-overs; null without any. */
  appetite: z.object({ p05: amount, p50: amount, p95: amount, feedings: z.int() }).nullable(),
  weight: z.object({ verdict: z.string(), changePerDay: z.number().nullable(), why: z.string() }).nullable(),
  comparison: z.object({ verdict: z.string(), ratio: amount.nullable() }).nullable(),
});

export const animalsAnswer = z.object({
  on: isoDay,
  days: z.int(),
  strains: z.array(
    z.object({ strain: z.string(), wantedFliesByDay: z.array(amount), sdByDay: z.array(amount), flyMassMg: range }),
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
      supplements: z.array(z.string()),
    }),
  ),
  /** Of the week's flies, with the dust of the plan; null when nothing is fed. */
  quality: z
    .object({
      calciumToPhosphorus: amount.nullable(),
      verdict: z.string(),
      proteinMg: amount,
      fatMg: amount,
      /** Calcium carbonate on 100 flies for 1.5 : 1, mg. */
      carbonateMgPer100Flies: amount,
    })
    .nullable(),
  cautions: z.array(z.string()),
});

export const flyPotAnswer = z.object({
  flies: amount,
  sd: amount,
  band: z.object({ p05: amount, p50: amount, p95: amount }),
  mainDoubt: z.enum(['the scale', 'the mean mass of a fly', 'the single flies']),
});

export type StarterRation = z.infer<typeof starterRation>;
export type RationAnswer = z.infer<typeof rationAnswer>;
export type AnimalsAnswer = z.infer<typeof animalsAnswer>;
