/** A day's temperature read at a place. */
import { entryKind, nameOf } from './entry-kind.ts';
import { key, temperatureC } from './field-checks.ts';

export const temperature = entryKind(
  'temperature',
  { place: key, meanC: temperatureC.optional(), minC: temperatureC.optional(), maxC: temperatureC.optional() },
  (e, names) =>
    `${nameOf(names, 'place', e.place)}: ${
      e.meanC === undefined ? `${e.minC} to ${e.maxC} °C` : `${e.meanC} °C`
    } read.`,
  (e) => {
    if ((e.minC === undefined) !== (e.maxC === undefined) || (e.meanC === undefined && e.minC === undefined)) {
      return [{ field: 'meanC', found: 'no complete reading', expected: 'meanC, or minC and maxC, or all three' }];
    }
    if (e.minC === undefined || e.maxC === undefined) return [];
    const mean = e.meanC ?? e.minC;
    return e.minC <= mean && mean <= e.maxC
      ? []
      : [{ field: 'minC', found: `${e.minC} to ${e.maxC}, mean ${mean}`, expected: 'minC at most meanC at most maxC' }];
  },
);
