/**
 * What every store does: one suite, run against each of them on the real thing. It needs no test
 * framework, so that it can run inside a browser's page too.
 */
import { canonicalText, type Entry } from '../logbook/index.ts';
import { numberedEntries, numberedEntry, numberedId } from './conformance-entries.ts';
import { type Store, StoreFault } from './store.ts';

/** A place for one logbook, empty at first; opened again it has what was put there. */
export interface StorePlace {
  open(): Promise<Store>;
}

export interface ConformanceCase {
  name: string;
  run(place: StorePlace): Promise<void>;
}

export const storeConformance: ConformanceCase[] = [
  withStore('is empty at first', async (store) => {
    same(await store.count(), 0, 'count');
    same(await store.lastCursor(), 0, 'last cursor');
    same(await texts(store), [], 'entries');
    same(await store.entry(numberedId(1)), null, 'an entry that is not there');
  }),
  withStore('gives entries back in the order it took them', async (store) => {
    await added(store, [numberedEntry(5), numberedEntry(2)], 2, 0);
    await added(store, [numberedEntry(9)], 1, 0);
    same(
      await texts(store),
      [5, 2, 9].map((n) => canonicalText(numberedEntry(n))),
      'entries',
    );
    const cursors = await cursorsOf(store);
    check(
      cursors.every((c, i) => c > (cursors[i - 1] ?? 0)),
      `cursors rise: ${cursors}`,
    );
    same(await store.lastCursor(), cursors[2], 'last cursor');
  }),
  withStore('passes over what is there already', async (store) => {
    await added(store, numberedEntries(0, 3), 3, 0);
    await added(store, numberedEntries(1, 5), 2, 2);
    await added(store, [numberedEntry(7), numberedEntry(7)], 1, 1);
    await added(store, [], 0, 0);
    same(await store.count(), 6, 'count');
  }),
  withStore('refuses other content under an id, with all that came beside it', async (store) => {
    await added(store, [numberedEntry(0)], 1, 0);
    const other = { ...numberedEntry(0), by: 'someone else' };
    await refused(store, [numberedEntry(1), other, numberedEntry(2)], other.id);
    await refused(store, [numberedEntry(3), { ...numberedEntry(3), by: 'someone else' }], numberedId(3));
    same(await texts(store), [canonicalText(numberedEntry(0))], 'entries');
    await added(store, [numberedEntry(1)], 1, 0);
  }),
  withStore('goes on after a cursor', async (store) => {
    await added(store, numberedEntries(0, 10), 10, 0);
    const cursors = await cursorsOf(store);
    for (const [i, cursor] of cursors.entries()) {
      same(await texts(store, cursor), numberedEntries(i + 1, 10).map(canonicalText), `after entry ${i}`);
    }
  }),
  withStore('keeps every character and digit', async (store) => {
    await added(store, oddEntries, oddEntries.length, 0);
    same(await texts(store), oddEntries.map(canonicalText), 'entries');
    for (const entry of oddEntries) same(textOf(await store.entry(entry.id)), canonicalText(entry), entry.id);
    await added(store, oddEntries, 0, oddEntries.length);
  }),
  withStore('gives copies: changing one changes nothing kept', async (store) => {
    await added(store, [numberedEntry(0)], 1, 0);
    for await (const { entry } of store.entries()) entry.by = 'changed';
    same(await texts(store), [canonicalText(numberedEntry(0))], 'entries');
  }),
  withStore('takes a large batch', async (store) => {
    await added(store, numberedEntries(0, 5000), 5000, 0);
    same(await texts(store), numberedEntries(0, 5000).map(canonicalText), 'entries');
  }),
  withStore('takes a stream of pieces as one, and other appends wait their turn', async (store) => {
    await added(store, [numberedEntry(0)], 1, 0);
    const beside: Promise<unknown>[] = [];
    async function* pieces() {
      yield numberedEntries(0, 700);
      beside.push(store.append([numberedEntry(5000)]));
      yield numberedEntries(700, 1400);
      yield [numberedEntry(1), numberedEntry(1400)];
    }
    const report = await store.appendStream(pieces());
    same(report, { ok: true, value: { added: 1400, alreadyThere: 2 } }, 'stream');
    await Promise.all(beside);
    same(await store.count(), 1402, 'count');
  }),
  withStore('takes nothing of a stream that is refused or breaks off', async (store) => {
    await added(store, [numberedEntry(0)], 1, 0);
    const other = { ...numberedEntry(0), by: 'someone else' };
    async function* clashing() {
      yield numberedEntries(1, 500);
      yield [other];
    }
    const refusal = await store.appendStream(clashing());
    check(!refusal.ok && refusal.problems.some((p) => p.where.includes(other.id)), 'refused because of the clash');
    async function* broken() {
      yield numberedEntries(1, 500);
      throw new Error('the source broke');
    }
    const error = await store.appendStream(broken()).catch((e: unknown) => e);
    check(String(error).includes('the source broke'), `a broken source gave ${String(error)}`);
    same(await texts(store), [canonicalText(numberedEntry(0))], 'entries');
    await added(store, numberedEntries(1, 3), 2, 0);
  }),
  withStore('takes many small ones at once, and a refusal among them harms no other', async (store) => {
    await added(store, [numberedEntry(0)], 1, 0);
    const bad = { ...numberedEntry(0), by: 'someone else' };
    const one = (i: number) => store.append(i === 20 ? [numberedEntry(500), bad] : [numberedEntry(i)]);
    const results = await Promise.all(Array.from({ length: 60 }, (_, i) => one(i)));
    same(results.filter((r) => !r.ok).length, 1, 'refusals');
    same(await store.count(), 59, 'count');
    same(await store.entry(numberedId(500)), null, 'the entry beside the refused one');
  }),
  withStore('can be read while it grows', async (store) => {
    await added(store, numberedEntries(0, 2500), 2500, 0);
    let read = 0;
    for await (const { entry } of store.entries()) {
      if (read === 10) await added(store, [numberedEntry(9000)], 1, 0);
      if (read < 2500) same(entry.id, numberedId(read), `entry ${read}`);
      read++;
    }
    check(read === 2500 || read === 2501, `read ${read} of 2500, or 2501`);
  }),
  withStore('tells which ids it does not have', async (store) => {
    await added(store, numberedEntries(0, 1500), 1500, 0);
    const asked = [numberedId(3000), ...numberedEntries(0, 1500).map((e) => e.id), numberedId(2000), 'no id'];
    same(await store.missing(asked), [numberedId(3000), numberedId(2000), 'no id'], 'missing');
    same(await store.missing([]), [], 'missing of none');
  }),
  withStore('remembers marks', async (store) => {
    same(await store.mark('pulled'), null, 'a mark never set');
    await store.setMark('pulled', '17');
    await store.setMark('pulled', '18');
    await store.setMark('pushed', '3');
    same([await store.mark('pulled'), await store.mark('pushed')], ['18', '3'], 'marks');
    same(await store.count(), 0, 'count');
  }),
  {
    name: 'has everything when it is opened again, and goes on',
    run: async (place) => {
      const before = await place.open();
      await added(before, numberedEntries(0, 100), 100, 0);
      await before.setMark('pulled', '7');
      const last = await before.lastCursor();
      await before.close();
      const after = await place.open();
      same(await texts(after), numberedEntries(0, 100).map(canonicalText), 'entries');
      same(await after.mark('pulled'), '7', 'mark');
      same(await after.lastCursor(), last, 'last cursor');
      await added(after, numberedEntries(50, 150), 50, 50);
      check((await after.lastCursor()) > last, 'cursors go on rising');
      await after.close();
    },
  },
  {
    name: 'fails plainly once it is closed',
    run: async (place) => {
      const store = await place.open();
      await store.close();
      const error = await store.append([numberedEntry(1)]).catch((e: unknown) => e);
      check(error instanceof StoreFault, `append after close gave ${String(error)}`);
      await store.close();
    },
  },
];

const oddTexts = [
  '"quotes" and \\backslashes\\',
  'Zürich 果蝇 🪰 \u2028 e\u0301 é',
  "'; drop table entries; --",
  '=1+1',
  'a\nb\tc',
];
const oddNumbers = [0.1, 1e-3, 1e5, 0.30000000000000004, 99999.99999999999];

const oddEntries: Entry[] = [
  ...oddTexts.map((text, i): Entry => ({ ...envelope(i), kind: 'note', text })),
  ...oddNumbers.map((amount, i): Entry => ({ ...envelope(100 + i), kind: 'stock', item: 'agar', amount, unit: 'g' })),
];

function envelope(n: number) {
  const { id, on, recordedAt, by } = numberedEntry(n);
  return { id, on, recordedAt, by };
}

function withStore(name: string, run: (store: Store) => Promise<void>): ConformanceCase {
  return {
    name,
    run: async (place) => {
      const store = await place.open();
      try {
        await run(store);
      } finally {
        await store.close();
      }
    },
  };
}

async function added(store: Store, entries: readonly Entry[], fresh: number, there: number): Promise<void> {
  same(await store.append(entries), { ok: true, value: { added: fresh, alreadyThere: there } }, 'append');
}

async function refused(store: Store, entries: readonly Entry[], id: string): Promise<void> {
  const result = await store.append(entries);
  check(!result.ok && result.problems.some((p) => p.where.includes(id)), `refused because of ${id}`);
}

async function texts(store: Store, after?: number): Promise<string[]> {
  const all: string[] = [];
  for await (const { entry } of store.entries(after)) all.push(canonicalText(entry));
  return all;
}

async function cursorsOf(store: Store): Promise<number[]> {
  const all: number[] = [];
  for await (const { cursor } of store.entries()) all.push(cursor);
  return all;
}

function textOf(entry: Entry | null): string | null {
  return entry && canonicalText(entry);
}

function same(found: unknown, expected: unknown, what: string): void {
  const [a, b] = [JSON.stringify(found), JSON.stringify(expected)];
  check(a === b, `${what}: found ${short(a)}, expected ${short(b)}`);
}

function check(holds: boolean, what: string): void {
  if (!holds) throw new Error(what);
}

function short(text: string): string {
  return text.length > 300 ? `${text.slice(0, 300)}...` : text;
}
