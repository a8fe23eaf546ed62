/**
 * The blocks of cups of one strain in one world, as parallel arrays that grow. A block is one cup, or
 * several of a session that share a draw where a household holds very many.
 */
export interface BlockTable {
  /** Blocks made so far. */
  blocks: number;
  /** Block numbers in the order in which they will be thrown out; those from `head` on may be alive. */
  order: Int32Array;
  head: number;
  curve: Int32Array;
  /** Day of starting (negative for cups older than today). */
  born: Int32Array;
  cups: Float64Array;
  pace: Float64Array;
  /** Yield of the block against a nominal cup: about its number of cups. */
  yieldFactor: Float64Array;
  failAge: Float64Array;
  failShare: Float64Array;
  /** Share of the block still alive. */
  alive: Float64Array;
  /** Nominal flies emerged so far at the block's pace. */
  emergedBefore: Float64Array;
  held: Float64Array;
  spentDay: Int32Array;
  /** Day on which its quarantine ends. */
  releasedDay: Float64Array;
  founderFromDay: Float64Array;
  founderUntilDay: Float64Array;
  gone: Uint8Array;
  /** What the keeper knows: 0 nothing yet, 1 its yield has been seen. */
  judged: Uint8Array;
  /** Days on which its yield can be judged, and on which a failure is noticed. */
  judgeDay: Float64Array;
  noticedDay: Float64Array;
  /** Day before which it holds nothing, gives nothing and can't be found failed: mornings pass it over. */
  wakeDay: Float64Array;
  /** Day before which the keeper learns nothing of it. */
  lookDay: Float64Array;
  /** Factor by which the keeper expects the rest of the block to differ from the expected curve. */
  believedFactor: Float64Array;
  bought: Uint8Array;
}

export function makeBlockTable(capacity: number): BlockTable {
  const whole = () => new Int32Array(capacity);
  const real = () => new Float64Array(capacity);
  const flag = () => new Uint8Array(capacity);
  return {
    blocks: 0,
    order: whole(),
    head: 0,
    curve: whole(),
    born: whole(),
    cups: real(),
    pace: real(),
    yieldFactor: real(),
    failAge: real(),
    failShare: real(),
    alive: real(),
    emergedBefore: real(),
    held: real(),
    spentDay: whole(),
    releasedDay: real(),
    founderFromDay: real(),
    founderUntilDay: real(),
    gone: flag(),
    judged: flag(),
    judgeDay: real(),
    noticedDay: real(),
    wakeDay: real(),
    lookDay: real(),
    believedFactor: real(),
    bought: flag(),
  };
}

/** Makes room for one more block, doubling every array when full; returns the new block's number. */
export function newBlock(table: BlockTable): number {
  if (table.blocks === table.order.length) grow(table);
  return table.blocks++;
}

function grow(table: BlockTable): void {
  const bigger = makeBlockTable(table.order.length * 2);
  for (const key of Object.keys(bigger) as (keyof BlockTable)[]) {
    const from = table[key];
    const to = bigger[key];
    if (typeof from === 'number' || typeof to === 'number') continue;
    to.set(from);
    (table as unknown as Record<string, typeof to>)[key] = to;
  }
}

/** Puts a block into the order of throwing out, after those that go on the same day. */
export function enterOrder(table: BlockTable, block: number): void {
  let at = table.blocks - 1;
  const day = table.spentDay[block] as number;
  while (at > table.head && (table.spentDay[table.order[at - 1] as number] as number) > day) {
    table.order[at] = table.order[at - 1] as number;
    at--;
  }
  table.order[at] = block;
}
