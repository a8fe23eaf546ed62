/** A group of animals and what it eats from a day on; a count of 0 ends it. */
import { z } from 'zod';
import { said } from '../../foundation/index.ts';
import { entryKind, nameOf } from './entry-kind.ts';
import { animalsSaid, withCommas } from './entry-words.ts';
import { between, dustingSchedule, isoDay, key, name, weekdayList, whole, yesNo } from './field-checks.ts';
import { animalMassG } from './weighed.ts';

const animals = whole(0, 100_000);

export const group = entryKind(
  'group',
  {
    group: key,
    name: name.optional(),
    animal: key.optional().describe('Kind of animal'),
    count: animals,
    fliesPerFeeding: between(0, 100_000).describe('Flies for one animal at one feeding'),
    strain: key,
    feedingWeekdays: weekdayList.optional().describe('Every day when left out'),
    from: isoDay.optional().describe("The entry's day when left out"),
    until: isoDay.optional().describe('Last day, if it is known'),
    canWaitDays: whole(0, 60).optional(),
    massG: animalMassG.optional().describe('One animal'),
    temperatureC: between(5, 40).optional().describe('Warmth in which the animals live'),
    flyShare: between(0.01, 1).optional().describe('Share of the diet that is flies'),
    keepRation: yesNo
      .optional()
      .describe('The ration stands as written, whatever left-overs, growth and the size of flies say'),
    dusting: dustingSchedule
      .optional()
      .describe("This group's schedule of supplements, in place of the household's; empty for none"),
    arrival: z
      .strictObject({ earliest: isoDay, latest: isoDay, countLow: animals, countHigh: animals })
      .optional()
      .describe('When hatch or arrival is not certain'),
  },
  (e, names) => {
    const name = e.name ?? nameOf(names, 'group', e.group);
    const from = e.from !== undefined && { day: e.from };
    if (e.count === 0) return from ? said`Group ${name} ends on ${from}.` : said`Group ${name} ends.`;
    return withCommas(
      said`Group ${name}: ${animalsSaid(e.count)}`,
      said`${e.fliesPerFeeding} ${nameOf(names, 'strain', e.strain)} each a feeding`,
      from && said`from ${from}`,
      e.until !== undefined && said`until ${{ day: e.until }}`,
    );
  },
  (e) => {
    const from = e.from ?? e.on;
    const problems = [];
    if (from !== undefined && e.until !== undefined && e.until < from) {
      problems.push({ field: 'until', found: e.until, expected: `a day not before ${from}` });
    }
    if (e.arrival && (e.arrival.latest < e.arrival.earliest || e.arrival.countHigh < e.arrival.countLow)) {
      problems.push({
        field: 'arrival',
        found: 'a range that runs backwards',
        expected: 'earliest to latest, low to high',
      });
    }
    if (e.feedingWeekdays?.length === 0) {
      problems.push({
        field: 'feedingWeekdays',
        found: 'no weekday',
        expected: 'at least one, or leave the field out',
      });
    }
    return problems;
  },
);
