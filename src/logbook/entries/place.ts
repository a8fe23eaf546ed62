/** A place where cups stand, with the temperature expected there. */
import { z } from 'zod';
import { type Said, type SaidValue, said } from '../../foundation/index.ts';
import { entryKind } from './entry-kind.ts';
import { detailed } from './entry-words.ts';
import { between, key, name, temperatureC } from './field-checks.ts';

export const place = entryKind(
  'place',
  {
    place: key,
    name: name.optional(),
    temperatureC: temperatureC.optional().describe('Expected all the year'),
    seasonsC: z
      .strictObject({ winter: temperatureC, spring: temperatureC, summer: temperatureC, autumn: temperatureC })
      .optional(),
    cupOffsetC: between(-10, 10).optional().describe('Cup minus room'),
    limitsC: z
      .strictObject({ low: temperatureC, high: temperatureC })
      .optional()
      .describe('Below and above these the keeper wants to be warned'),
  },
  (e) =>
    detailed(
      said`Place ${e.name ?? e.place}`,
      e.temperatureC !== undefined && said`about ${{ degreesC: e.temperatureC }}`,
      e.seasonsC &&
        said`winter ${bare(e.seasonsC.winter)}, spring ${bare(e.seasonsC.spring)}, summer ${bare(e.seasonsC.summer)}, autumn ${{ degreesC: e.seasonsC.autumn }}`,
      e.cupOffsetC !== undefined && offsetSaid(e.cupOffsetC),
      e.limitsC && said`warned below ${bare(e.limitsC.low)} and above ${{ degreesC: e.limitsC.high }}`,
    ),
  (e) => {
    if (e.temperatureC !== undefined && e.seasonsC !== undefined) {
      return [{ field: 'seasonsC', found: 'temperatureC and seasonsC together', expected: 'one of the two' }];
    }
    if (!e.limitsC || e.limitsC.low < e.limitsC.high) return [];
    return [{ field: 'limitsC', found: `${e.limitsC.low} to ${e.limitsC.high}`, expected: 'low below high' }];
  },
);

/** A temperature whose unit follows with the next one. */
function bare(degreesC: number): SaidValue {
  return { degreesC, bare: true };
}

function offsetSaid(cupOffsetC: number): Said {
  if (cupOffsetC === 0) return said`cups as warm as the room`;
  return cupOffsetC > 0
    ? said`cups ${{ degreesApartC: cupOffsetC }} warmer than the room`
    : said`cups ${{ degreesApartC: -cupOffsetC }} cooler than the room`;
}
