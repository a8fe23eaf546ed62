/**
 * Flies that go with cups thrown out. Cups are fed from in the order in which they go, so the flies left
 * in those that go by day x are what the need until x does not eat. A keeper who counted them as stock
 * for later would be short on the day after.
 */
import { stockShare } from './keeper-view.ts';
import type { KeeperView } from './keeper-view.ts';

/** Scratch by day from today: flies expected of the cups that have gone by a given day. */
let flow = new Float64Array(256);
let loss = new Float64Array(256);

/**
 * Flies lost with cups that go on day `t` + i, by i, as the keeper expects on day `t` with `stock` flies
 * seen; null when nothing worth counting goes before `first`.
 */
export function expectedLosses(
  view: KeeperView,
  t: number,
  stock: number,
  mean: number,
  first: number,
): Float64Array | null {
  const span = first - t;
  if (span <= 0 || !mayLose(view, t, stock, mean, first)) return null;
  if (span + 1 > flow.length) {
    flow = new Float64Array(2 * span);
    loss = new Float64Array(2 * span);
  }
  flow.fill(0, 0, span + 1);
  loss.fill(0, 0, span + 1);
  const { table } = view.sw;
  let held = 0;
  for (let i = table.head; i < table.blocks; i++) {
    const b = table.order[i] as number;
    if (table.gone[b]) continue;
    const gone = table.spentDay[b] as number;
    if (gone >= first) break;
    held += stockShare(view, b, stock);
    addFlow(view, b, t, mean, gone);
    const next = table.order[i + 1];
    if (i + 1 < table.blocks && next !== undefined && table.spentDay[next] === gone) continue;
    loss[gone - t] = leftOver(view, t, held, gone);
  }
  return loss;
}

/** Cheap check: whether the cups that go before `first` may hold more than the need until they go. */
function mayLose(view: KeeperView, t: number, stock: number, mean: number, first: number): boolean {
  const { table, prepared } = view.sw;
  const { curves, needBefore } = prepared;
  const { order, spentDay } = table;
  let flies = 0;
  for (let i = table.head; i < table.blocks; i++) {
    const b = order[i] as number;
    if (table.gone[b]) continue;
    const gone = spentDay[b] as number;
    if (gone >= first) return false;
    const c = (table.curve[b] as number) * curves.stride;
    const now = Math.min(curves.stride - 1, t - (table.born[b] as number));
    const ahead = (curves.expectedBefore[c + curves.stride - 1] as number) - (curves.expectedBefore[c + now] as number);
    flies += stockShare(view, b, stock) + ahead * (table.believedFactor[b] as number) * (table.judged[b] ? 1 : mean);
    if (flies * 0.8 > (needBefore[gone + 1] as number) - (needBefore[t] as number)) return true;
  }
  return false;
}

function addFlow(view: KeeperView, b: number, t: number, mean: number, gone: number): void {
  const { table, prepared } = view.sw;
  const { curves } = prepared;
  const base = (table.curve[b] as number) * curves.stride - (table.born[b] as number);
  const isNew = !table.judged[b] && (table.curve[b] as number) < curves.firstExisting;
  const factor = (table.believedFactor[b] as number) * (isNew ? mean : 1);
  for (let day = t + 1; day <= gone; day++) {
    flow[day - t] = (flow[day - t] as number) + factor * (curves.expected[base + day] as number);
  }
}

/** Flies left on the evening of `gone` in the cups that have gone by then, after the need and earlier losses. */
function leftOver(view: KeeperView, t: number, held: number, gone: number): number {
  const { need, founderShare, strain } = view.sw.prepared;
  let m = held;
  for (let day = t; day <= gone; day++) {
    if (day > t) m = m * strain.adultDailySurvival + (flow[day - t] as number);
    m -= (need[day] as number) * (1 + founderShare) + (day < gone ? (loss[day - t] as number) : 0);
    if (m < 0) m = 0;
  }
  return m;
}
