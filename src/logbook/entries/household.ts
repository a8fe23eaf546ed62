/** The household's settings; a later entry overrides the fields that it gives. */
import { z } from 'zod';
import { type Said, said, type Weekday, weekdaySaid } from '../../foundation/index.ts';
import { entryKind } from './entry-kind.ts';
import { detailed } from './entry-words.ts';
import { between, dustingSchedule, line, name, weekdayList, whole, word, yesNo } from './field-checks.ts';

const currencyError = 'a currency code of three capital letters such as EUR';

export const household = entryKind(
  'household',
  {
    name: name.optional(),
    workWeekdays: weekdayList.optional().describe('Weekdays with time for starting cups'),
    serviceLevel: between(0.5, 0.9999).optional().describe('Chance of no shortfall asked of every day'),
    maxCupsPerSession: whole(1, 10_000).optional(),
    shelfCups: whole(1, 1_000_000).optional(),
    backup: z
      .strictObject({ cupsPerStrain: whole(0, 1000).optional(), inTwoPlaces: yesNo.optional() })
      .optional()
      .describe('Cups of each strain that can found others, kept whatever the need; spread over two places'),
    leastFounders: whole(1, 10_000).optional().describe('Fewest flies that a cup is started with, against inbreeding'),
    purchase: z
      .strictObject({
        leadDays: whole(0, 120).optional(),
        deliveryWeekdays: weekdayList.optional(),
        quarantineDays: whole(0, 365).optional(),
        pricePerCup: between(0, 1_000_000).optional(),
      })
      .optional(),
    weights: z
      .strictObject({
        perCup: between(0, 1_000_000).optional(),
        perSession: between(0, 1_000_000).optional(),
        perBoughtCup: between(0, 1_000_000).optional(),
      })
      .optional()
      .describe('What a cup and a session cost the keeper, in one unit'),
    currency: z
      .string({ error: currencyError })
      .regex(/^[A-Z]{3}$/, { error: currencyError })
      .optional(),
    hemisphere: word(['north', 'south']).optional(),
    timeZone: line(64).optional(),
    dusting: dustingSchedule
      .optional()
      .describe("The keeper's or the vet's schedule: which supplement on how many feedings a week"),
    presumeFeeding: yesNo.optional().describe('Planned feeding that nobody recorded is presumed done'),
  },
  (e) =>
    detailed(
      said`Household set up`,
      e.name,
      e.workWeekdays && workSaid(e.workWeekdays),
      e.serviceLevel !== undefined && said`every day at least ${e.serviceLevel * 100} % sure`,
    ),
);

function workSaid(weekdays: readonly Weekday[]): Said {
  return weekdays.length === 0
    ? said`no fly work`
    : said`fly work on ${{ list: weekdays.map((each) => weekdaySaid[each]) }}`;
}
