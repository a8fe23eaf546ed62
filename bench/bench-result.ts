/** What a bench hands to the runner: one table. */
export interface BenchRow {
  what: string;
  figure: number | string;
  /** The named baseline, with its own figure. */
  baseline: number | string;
  ratio: number | string;
  target?: number | string;
}

export interface BenchResult {
  title: string;
  rows: BenchRow[];
}
