/** Tables of cups, kept between calls: a new note changes one cup's table, the others are as they were. */
import type { CupEvidence } from './evidence.ts';
import { type CupTable, cupTable, type TableContext } from './cup-table.ts';

/** A table with what it was made from, as plain data. */
export interface KeptTable {
  id: string;
  evidence: string;
  table: CupTable;
}

export class TableMemory {
  /** Tables made since the beginning. */
  changes = 0;

  /** @param most tables that are kept; the oldest go first. A table takes some 100 kB. */
  constructor(private readonly most = 600) {}

  private readonly kept = new Map<string, { evidence: string; table: CupTable }>();

  /** The cup's table: the kept one when nothing that it depends on has changed. */
  tableOf(cup: CupEvidence, context: TableContext): CupTable {
    const evidence = fingerprint(cup, context);
    const known = this.kept.get(cup.id);
    if (known?.evidence === evidence) return known.table;
    const table = cupTable(cup, context);
    this.changes++;
    this.kept.delete(cup.id);
    this.kept.set(cup.id, { evidence, table });
    this.forgetOldest();
    return table;
  }

  snapshot(): KeptTable[] {
    return [...this.kept].map(([id, { evidence, table }]) => ({ id, evidence, table }));
  }

  restore(tables: readonly KeptTable[]): void {
    for (const { id, evidence, table } of tables) this.kept.set(id, { evidence, table });
    this.forgetOldest();
  }

  private forgetOldest(): void {
    for (const id of this.kept.keys()) {
      if (this.kept.size <= this.most) return;
      this.kept.delete(id);
    }
  }
}

/** Everything that the table is computed from, as text. */
function fingerprint(cup: CupEvidence, context: TableContext): string {
  const { ageDays, looks, takes, firstSeenAge } = cup;
  const { prior, survival, taps } = context;
  return JSON.stringify([ageDays, looks, takes, firstSeenAge, prior, survival, taps, Array.from(cup.emergedByAge)]);
}
