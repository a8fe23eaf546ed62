/** The shape of the answer to `strains`, at every door. */
import { z } from 'zod';
import { isoDay } from '../answers.ts';

const days = z.number().min(0);

export const strainBookAnswer = z.object({
  on: isoDay,
  strains: z.array(
    z.object({
      strain: z.string(),
      name: z.string(),
      base: z.string(),
      mutation: z.string(),
      paceFactor: z.number(),
      yieldFactor: z.number(),
      massFactor: z.number(),
      livingCups: z.int().min(0),
      /** Where most of its cups stand, and the mean there over the coming month. */
      place: z.string(),
      temperatureC: z.number(),
      /** Ages of a cup that is started now. */
      firstFliesDays: days,
      foundersFromDays: days,
      foundersUntilDays: days,
      spentDays: days,
      fliesPerCup: z.number().min(0),
      /** Of one fly; null where nothing is known. */
      flyMassMg: z.object({ low: z.number(), middle: z.number(), high: z.number() }).nullable(),
    }),
  ),
  /** Published strains that an own one can be based on. */
  bases: z.array(z.object({ base: z.string(), name: z.string(), species: z.string() })),
  mutations: z.array(
    z.object({
      symbol: z.string(),
      name: z.string(),
      chromosome: z.string().nullable(),
      position: z.number().nullable(),
      dominance: z.enum(['recessive', 'dominant']),
      lethalHomozygous: z.boolean(),
      source: z.string(),
      status: z.string(),
    }),
  ),
});

export type StrainBook = z.infer<typeof strainBookAnswer>;
