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
  const { table, prepared } = sw;
  let sparable = -prepared.founderReserve;
  for (let i = table.head; i < table.blocks; i++) {
    const b = table.order[i] as number;
    if (mayFound(table, b, nextSession)) sparable += table.held[b] as number;
  }
  let rest = feedFrom(table, wanted, nextSession, Math.max(0, sparable));
  const lacking = urgent - (wanted - rest);
  if (rest > 0 && lacking > 0) rest += feedFrom(table, lacking, -1, 0) - lacking;
  const fed = wanted - rest;
  sw.onHand -= fed;
  return fed;
}

/** Takes up to `wanted` flies in order, at most `sparable` of them from founder cups; returns what is missing. */
function feedFrom(table: BlockTable, wanted: number, nextSession: number, sparable: number): number {
  let rest = wanted;
  let spare = sparable;
  for (let i = table.head; i < table.blocks && rest > 0; i++) {
    const b = table.order[i] as number;
    const held = table.held[b] as number;
    if (held <= 0) continue;
    const kept = nextSession >= 0 && mayFound(table, b, nextSession);
    const most = kept && held > spare ? spare : held;
    const taken = most < rest ? most : rest;
    if (kept) spare -= taken;
    table.held[b] = held - taken;
    rest -= taken;
  }
  return rest;
}
