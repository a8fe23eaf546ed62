/** The shape of the answer to `ledger`, at every door. */
import { z } from 'zod';
import { isoDay } from '../answers.ts';

const amount = z.number().min(0);

export const ledgerAnswer = z.object({
  on: isoDay,
  currency: z.string(),
  /** False when no price was ever written: costs are 0 then because nothing is known. */
  hasPrices: z.boolean(),
  /** Weeks by their Monday, without gaps. */
  weeks: z.array(
    z.object({
      week: isoDay,
      cups: amount,
      mediumMassG: amount,
      cost: amount,
      fliesTaken: amount,
      fliesWasted: amount,
      /** Of the cups that ended in this week, over their whole lives. */
      cupsEnded: amount,
      fliesPerEndedCup: amount.nullable(),
      mediumGPerFly: amount.nullable(),
    }),
  ),
  fliesPerEndedCup: amount.nullable(),
  mediumGPerFly: amount.nullable(),
  costPer100Flies: amount.nullable(),
});

export type LedgerAnswer = z.infer<typeof ledgerAnswer>;
