/** Where a cup comes from: its forebears, a generation a row. */
import type { CultureFacts } from '../../../logbook/index.ts';

/**
 * The cups that gave its founders, then those that gave theirs, and so on; a cup stands in the nearest
 * generation that it belongs to. `generations` bounds the rows.
 */
export function forebears(cultures: readonly CultureFacts[], culture: string, generations: number): CultureFacts[][] {
  const byKey = new Map(cultures.map((each) => [each.culture, each]));
  const known = new Set([culture]);
  const rows: CultureFacts[][] = [];
  let row = parentsOf([culture], byKey, known);
  while (row.length > 0 && rows.length < generations) {
    rows.push(row);
    row = parentsOf(
      row.map((each) => each.culture),
      byKey,
      known,
    );
  }
  return rows;
}

function parentsOf(keys: string[], byKey: ReadonlyMap<string, CultureFacts>, known: Set<string>): CultureFacts[] {
  const parents = keys.flatMap((key) => byKey.get(key)?.fromCultures ?? []);
  return [...new Set(parents)].flatMap((parent) => {
    const found = byKey.get(parent);
    if (!found || known.has(parent)) return [];
    known.add(parent);
    return [found];
  });
}
