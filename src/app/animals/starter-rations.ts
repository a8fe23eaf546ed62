/** Starter rations by plain trade names, as the doors show them. */
import { publishedRations, source, sourceLine } from '../../reference/index.ts';
import type { StarterRation } from './animal-answers.ts';

export function starterRations(): StarterRation[] {
  return publishedRations.map((row) => {
    const from = source(row.source);
    return {
      animal: row.animal,
      name: row.name,
      taxon: row.taxon,
      massG: { low: row.massLowG, high: row.massHighG },
      fliesPerFeeding: { low: row.fliesLow, high: row.fliesHigh },
      fly: row.fly,
      everyDays: { low: row.everyDaysLow, high: row.everyDaysHigh },
      canWaitDays: row.canWaitDays,
      next: row.next === '' ? null : row.next,
      stageDays:
        row.stageDaysLow === null || row.stageDaysHigh === null
          ? null
          : { low: row.stageDaysLow, high: row.stageDaysHigh },
      source: from ? sourceLine(from) : row.source,
      status: row.status,
      note: row.note,
    };
  });
}
