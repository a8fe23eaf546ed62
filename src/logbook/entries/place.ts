/** A place where cups stand, with the temperature expected there. */
import { z } from 'zod';
import { details, entryKind } from './entry-kind.ts';
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
  },
  (e) =>
    `Place ${e.name ?? e.place}${details(
      e.temperatureC !== undefined && `about ${e.temperatureC} °C`,
      e.seasonsC &&
        `winter ${e.seasonsC.winter}, spring ${e.seasonsC.spring}, summer ${e.seasonsC.summer}, autumn ${e.seasonsC.autumn} °C`,
      e.cupOffsetC !== undefined && `cups ${e.cupOffsetC} °C against the room`,
    )}.`,
  (e) =>
    e.temperatureC !== undefined && e.seasonsC !== undefined
      ? [{ field: 'seasonsC', found: 'temperatureC and seasonsC together', expected: 'one of the two' }]
      : [],
);
