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
  /** Cups of which nothing different is known share one table: of a shelf started in a morning, most do. */
  private readonly shared = new Map<string, CupTable>();

  /** The cup's table: a kept one when nothing that it depends on has changed. Nobody may write into it. */
  tableOf(cup: CupEvidence, context: TableContext): CupTable {
    const evidence = fingerprint(cup, context);
    const known = this.kept.get(cup.id);
    if (known?.evidence === evidence) return known.table;
    const table = this.shared.get(evidence) ?? this.made(cup, context);
    this.kept.delete(cup.id);
    this.keep(cup.id, evidence, table);
    this.forgetOldest();
    return table;
  }

  snapshot(): KeptTable[] {
    return [...this.kept].map(([id, { evidence, table }]) => ({ id, evidence, table }));
  }

  restore(tables: readonly KeptTable[]): void {
    for (const { id, evidence, table } of tables) this.keep(id, evidence, table);
    this.forgetOldest();
  }

  private made(cup: CupEvidence, context: TableContext): CupTable {
    this.changes++;
    return cupTable(cup, context);
  }

  private keep(id: string, evidence: string, table: CupTable): void {
    this.kept.set(id, { evidence, table });
    this.shared.set(evidence, table);
  }

  private forgetOldest(): void {
    forgetOldestOf(this.kept, this.most);
    forgetOldestOf(this.shared, this.most);
  }
}

function forgetOldestOf(map: Map<string, unknown>, most: number): void {
  for (const key of map.keys()) {
    if (map.size <= most) return;
    map.delete(key);
  }
}

/** Everything that the table is computed from, as text. */
function fingerprint(cup: CupEvidence, context: TableContext): string {
  const { ageDays, looks, takes, firstSeenAge } = cup;
  const { prior, survival, taps } = context;
  return JSON.stringify([ageDays, looks, takes, firstSeenAge, prior, survival, taps, Array.from(cup.emergedByAge)]);
}
