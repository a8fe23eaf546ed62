/** The shape of the answer to `larder`, at every door. */
import { z } from 'zod';
import { isoDay } from '../answers.ts';

const amount = z.number().min(0);

export const larderItem = z.object({
  item: z.string(),
  amount,
  unit: z.enum(['g', 'piece']),
  countedOn: isoDay,
  /** Of a gram or a piece; null when never written. */
  price: amount.nullable(),
  /** Cups that it lasts for; null for what no cup of this recipe needs. */
  cups: amount.nullable(),
});

export const larderAnswer = z.object({
  on: isoDay,
  recipe: z.string(),
  /** Medium in each cup that `cups` are reckoned with. */
  mediumMassG: amount,
  items: z.array(larderItem),
  /** What a cup needs and nobody has counted yet. */
  uncounted: z.array(z.string()),
  /** Whole cups that everything counted lasts for, and what runs out first; null before anything was counted. */
  lastsCups: amount.nullable(),
  limitedBy: z.string().nullable(),
  /** Cups, lids and nesting material: where they are now; clean and dirty are null when never counted. */
  things: z.array(
    z.object({ thing: z.string(), inUse: z.int().min(0), clean: amount.nullable(), dirty: amount.nullable() }),
  ),
  /** Medium that was mixed, the one to use first at the top. */
  batches: z.array(
    z.object({
      batch: z.string(),
      on: isoDay,
      recipe: z.string().nullable(),
      massG: amount,
      leftG: amount,
      goodUntil: isoDay.nullable(),
      isPast: z.boolean(),
    }),
  ),
  currency: z.string(),
});

export type LarderAnswer = z.infer<typeof larderAnswer>;

export const recipeBookAnswer = z.array(
  z.object({
    recipe: z.string(),
    name: z.string(),
    /** Written by the household; else one of the starter recipes. */
    isOwn: z.boolean(),
    method: z.enum(['cooked', 'soaked']),
    ingredients: z.array(z.object({ ingredient: z.string(), massG: amount })),
    waterMl: amount,
    massG: amount,
    liquidToDryByMass: amount.nullable(),
  }),
);

export type RecipeBookAnswer = z.infer<typeof recipeBookAnswer>;
