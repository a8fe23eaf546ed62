/**
 * The cups that a projection looks at, with what does not change from day to day gathered once: where they
 * are on their curve, what is believed of them, what they hold. Scratch, written anew for every projection.
 */
import { type KeeperView, stockShare } from './keeper-view.ts';

/** What is known of a source: its yield has been seen, it is new, or it was there on day 0. */
export const judgedSource = 0;
export const newSource = 1;
export const existingSource = 2;

export interface Sources {
  count: number;
  spentDay: Int32Array;
  born: Int32Array;
  curve: Int32Array;
  /** Where day 0 lies in the flat arrays of curves. */
  base: Int32Array;
  kind: Uint8Array;
  cups: Float64Array;
  believed: Float64Array;
  /** Factor of what is believed of the household: 1 for cups that have their own. */
  householdMean: Float64Array;
  /** Expected flies held now when none are taken. */
  decayedNow: Float64Array;
  /** Share of failing cups that has failed by now. */
  failedNow: Float64Array;
  /** Flies seen in it now. */
  stock: Float64Array;
}

export let sources = makeSources(128);

function makeSources(capacity: number): Sources {
  const real = () => new Float64Array(capacity);
  const whole = () => new Int32Array(capacity);
  return {
    count: 0,
    spentDay: whole(),
    born: whole(),
    curve: whole(),
    base: whole(),
    kind: new Uint8Array(capacity),
    cups: real(),
    believed: real(),
    householdMean: real(),
    decayedNow: real(),
    failedNow: real(),
    stock: real(),
  };
}

/** Gathers the cups that are not thrown out before `first`, as seen on day `t` with `stock` flies in all. */
export function gatherSources(view: KeeperView, t: number, stock: number, first: number, householdMean: number): void {
  const { table } = view.sw;
  const { order, gone, spentDay } = table;
  if (table.blocks - table.head > sources.born.length) sources = makeSources(2 * (table.blocks - table.head));
  sources.count = 0;
  for (let i = table.head; i < table.blocks; i++) {
    const b = order[i] as number;
    if (!gone[b] && first <= (spentDay[b] as number)) gather(view, b, t, stock, householdMean);
  }
}

function gather(view: KeeperView, b: number, t: number, stock: number, householdMean: number): void {
  const { table, prepared } = view.sw;
  const { curves, strain } = prepared;
  const { failedBefore } = strain.uncertainty.failure;
  const i = sources.count++;
  const c = table.curve[b] as number;
  const born = table.born[b] as number;
  const isNew = !table.judged[b] && c < curves.firstExisting;
  sources.spentDay[i] = table.spentDay[b] as number;
  sources.born[i] = born;
  sources.curve[i] = c;
  sources.base[i] = c * curves.stride - born;
  sources.kind[i] = table.judged[b] ? judgedSource : isNew ? newSource : existingSource;
  sources.cups[i] = table.cups[b] as number;
  sources.believed[i] = table.believedFactor[b] as number;
  sources.householdMean[i] = isNew ? householdMean : 1;
  sources.decayedNow[i] = curves.decayed[c * curves.stride + t - born] as number;
  sources.failedNow[i] = failedBefore[Math.min(t - born, failedBefore.length - 1)] as number;
  sources.stock[i] = stockShare(view, b, stock);
}
