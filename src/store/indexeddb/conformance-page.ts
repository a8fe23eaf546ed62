/** Runs the conformance suite in a page: bundled and driven by the browser test. */
import { storeConformance } from '../conformance.ts';
import { numberedEntries, numberedEntry } from '../conformance-entries.ts';
import { StoreFault } from '../store.ts';
import { deleteIndexedDbStore, openIndexedDbStore } from './index.ts';

const page = {
  names: storeConformance.map((c) => c.name),
  /** Null, or what went wrong. */
  async run(index: number): Promise<string | null> {
    const name = `conformance ${index}`;
    await deleteIndexedDbStore(name);
    try {
      await storeConformance[index]?.run({ open: () => openIndexedDbStore(name) });
      return null;
    } catch (error) {
      return error instanceof Error ? (error.stack ?? error.message) : String(error);
    } finally {
      await deleteIndexedDbStore(name);
    }
  },
  async record(name: string, from: number, until: number): Promise<void> {
    const store = await openIndexedDbStore(name);
    for (let n = from; n < until; n++) await store.append([numberedEntry(n)]);
    await store.close();
  },
  async count(name: string): Promise<number> {
    const store = await openIndexedDbStore(name);
    const count = await store.count();
    await store.close();
    return count;
  },
  /** The message of the fault that too many entries for the site's space give. */
  async fill(name: string, batches: number): Promise<{ message: string; acknowledged: number; kept: number }> {
    const store = await openIndexedDbStore(name);
    let acknowledged = 0;
    let message = '';
    for (let i = 0; i < batches && message === ''; i++) {
      try {
        await store.append(numberedEntries(i * 2000, (i + 1) * 2000));
        acknowledged += 2000;
      } catch (error) {
        message = error instanceof StoreFault ? error.message : `no StoreFault: ${String(error)}`;
      }
    }
    const kept = await store.count();
    await store.close();
    return { message, acknowledged, kept };
  },
};

Object.assign(globalThis, { conformancePage: page });
export type ConformancePage = typeof page;
