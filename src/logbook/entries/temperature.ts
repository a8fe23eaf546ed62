/** A day's temperature or humidity read at a place; or one moment's, in a cup and beside it on the shelf. */
import { type Said, type SaidValue, said } from '../../foundation/index.ts';
import { entryKind, nameOf } from './entry-kind.ts';
import { listed } from './entry-words.ts';
import { between, key, temperatureC } from './field-checks.ts';

/** No ferment heats a cup by more; the limit of `cupOffsetC`. */
const mostApartC = 10;

export const temperature = entryKind(
  'temperature',
  {
    place: key,
    meanC: temperatureC.optional(),
    minC: temperatureC.optional(),
    maxC: temperatureC.optional(),
    cupC: temperatureC.optional().describe('Inside a cup, at one moment'),
    shelfC: temperatureC.optional().describe('Beside that cup on the shelf, at the same moment'),
    humidityPercent: between(0, 100).optional().describe('Relative humidity of the room'),
  },
  (e, names) => said`${nameOf(names, 'place', e.place)}: ${readSaid(e)} read.`,
  (e) => {
    if ((e.cupC === undefined) !== (e.shelfC === undefined)) {
      return [{ field: 'cupC', found: 'one of cupC and shelfC', expected: 'both, read at the same moment' }];
    }
    if (Math.abs((e.cupC ?? 0) - (e.shelfC ?? 0)) > mostApartC) {
      const expected = `a cup within ${mostApartC} °C of its shelf`;
      return [{ field: 'cupC', found: `${e.cupC} in a cup with ${e.shelfC} beside it`, expected }];
    }
    const isRoomUnread = e.meanC === undefined && e.minC === undefined && e.maxC === undefined;
    if (isRoomUnread && (e.cupC !== undefined || e.humidityPercent !== undefined)) return [];
    if ((e.minC === undefined) !== (e.maxC === undefined) || (e.meanC === undefined && e.minC === undefined)) {
      return [
        {
          field: 'meanC',
          found: 'no complete reading',
          expected: 'meanC, or minC and maxC, or all three; or cupC and shelfC; or humidityPercent',
        },
      ];
    }
    if (e.minC === undefined || e.maxC === undefined) return [];
    const mean = e.meanC ?? e.minC;
    return e.minC <= mean && mean <= e.maxC
      ? []
      : [{ field: 'minC', found: `${e.minC} to ${e.maxC}, mean ${mean}`, expected: 'minC at most meanC at most maxC' }];
  },
);

interface Read {
  meanC?: number | undefined;
  minC?: number | undefined;
  maxC?: number | undefined;
  cupC?: number | undefined;
  shelfC?: number | undefined;
  humidityPercent?: number | undefined;
}

function readSaid({ meanC, minC, maxC, cupC, shelfC, humidityPercent }: Read): SaidValue {
  const parts = [
    roomSaid(meanC, minC, maxC),
    cupC !== undefined &&
      shelfC !== undefined &&
      said`${{ degreesC: cupC }} in a cup with ${{ degreesC: shelfC }} beside it`,
    humidityPercent !== undefined && said`${humidityPercent} % humidity`,
  ];
  return listed(parts) ?? '';
}

function roomSaid(meanC: number | undefined, minC: number | undefined, maxC: number | undefined): Said | null {
  if (meanC !== undefined) return said`${{ degreesC: meanC }}`;
  return minC === undefined || maxC === undefined
    ? null
    : said`${{ degreesC: minC, bare: true }} to ${{ degreesC: maxC }}`;
}
