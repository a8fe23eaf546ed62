/** Tables of cups, kept between calls: a new note changes one cup's table, the others are as they were. */
import type { CupEvidence } from './evidence.ts';
import { type CupTable, cupTable, type TableContext } from './cup-table.ts';

export class TableMemory {
  private readonly kept = new Map<string, { evidence: string; table: CupTable }>();

  /** The cup's table: the kept one when nothing that it depends on has changed. */
  tableOf(cup: CupEvidence, context: TableContext): CupTable {
    const evidence = fingerprint(cup, context);
    const known = this.kept.get(cup.id);
    if (known?.evidence === evidence) return known.table;
    const table = cupTable(cup, context);
    this.kept.set(cup.id, { evidence, table });
    return table;
  }
}

/** Everything that the table is computed from, as text. */
function fingerprint(cup: CupEvidence, context: TableContext): string {
  const { ageDays, looks, takes, firstSeenAge } = cup;
  const { prior, survival, taps } = context;
  return JSON.stringify([ageDays, looks, takes, firstSeenAge, prior, survival, taps, Array.from(cup.emergedByAge)]);
}
