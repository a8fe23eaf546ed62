/**
 * Flies taken out of the cups of one world on a day: founders from cups at their best, then rations from
 * the cups that go first.
 */
import type { BlockTable } from './block-table.ts';
import type { StrainWorld } from './strain-world.ts';

/** Flies in cups that may give founders on day `t`. */
export function founderFlies(sw: StrainWorld, t: number): number {
  const { table } = sw;
  let flies = 0;
  for (let i = table.head; i < table.blocks; i++) {
    const b = table.order[i] as number;
    if (mayFound(table, b, t)) flies += table.held[b] as number;
  }
  return flies;
}

export function mayFound(table: BlockTable, b: number, t: number): boolean {
  return (
    !table.gone[b] &&
    t >= (table.founderFromDay[b] as number) &&
    t <= (table.founderUntilDay[b] as number) &&
    t <= (table.spentDay[b] as number)
  );
}

/** Takes founders in equal share from every cup that may give them. The caller knows there are enough. */
export function takeFounders(sw: StrainWorld, t: number, flies: number, available: number): void {
  const { table } = sw;
  const keep = available > 0 ? Math.max(0, 1 - flies / available) : 0;
  for (let i = table.head; i < table.blocks; i++) {
    const b = table.order[i] as number;
    if (mayFound(table, b, t)) table.held[b] = (table.held[b] as number) * keep;
  }
  sw.onHand -= flies;
}

/**
 * Feeds `wanted` flies on day `t`, from the cups that go first; returns the flies fed. Of the cups that may
 * give founders at the session on `nextSession`, a reserve is left unless the `urgent` part would go short.
 */
export function feed(sw: StrainWorld, wanted: number, nextSession: number, urgent = wanted): number {
  if (wanted <= 0) return 0;
  let rest = feedFrom(sw, wanted, nextSession);
  const lacking = urgent - (wanted - rest);
  if (rest > 0 && lacking > 0) rest += feedFrom(sw, lacking, -1) - lacking;
  const fed = wanted - rest;
  sw.onHand -= fed;
  return fed;
}

/**
 * Takes up to `wanted` flies in order; returns what is missing. From cups that may give founders at `nextSession`
 * (none where it is below 0) only what can be spared, which is reckoned when the first of them is come to.
 */
function feedFrom(sw: StrainWorld, wanted: number, nextSession: number): number {
  const { table } = sw;
  const { order, held: heldByBlock } = table;
  let rest = wanted;
  let spare = -1;
  for (let i = table.head; i < table.blocks && rest > 0; i++) {
    const b = order[i] as number;
    const held = heldByBlock[b] as number;
    if (held <= 0) continue;
    const kept = nextSession >= 0 && mayFound(table, b, nextSession);
    if (kept && spare < 0) spare = sparableFlies(sw, nextSession);
    const most = kept && held > spare ? spare : held;
    const taken = most < rest ? most : rest;
    if (kept) spare -= taken;
    heldByBlock[b] = held - taken;
    rest -= taken;
  }
  return rest;
}

/** Flies of founder cups beyond the reserve for the session on `nextSession`; at least 0. */
function sparableFlies({ table, prepared }: StrainWorld, nextSession: number): number {
  const { order, held } = table;
  let sparable = -prepared.founderReserve;
  for (let i = table.head; i < table.blocks; i++) {
    const b = order[i] as number;
    if ((held[b] as number) > 0 && mayFound(table, b, nextSession)) sparable += held[b] as number;
  }
  return Math.max(0, sparable);
}
