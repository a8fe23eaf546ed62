/**
 * A process for the kill tests: records entries in the folder of its first argument until it is
 * killed, and prints the number of each once the store has acknowledged it.
 */
import { writeSync } from 'node:fs';
import { numberedEntry } from '../conformance-entries.ts';
import { openSqliteStore } from './index.ts';

const [folder = '', first = '0', atOnce = '1'] = process.argv.slice(2);
// Left alone, a limit on the size of files would end the process instead of failing the write.
process.on('SIGXFSZ', () => {});
const store = openSqliteStore(folder);
let next = Number(first);

async function recordForEver(): Promise<never> {
  for (;;) {
    const mine = next++;
    const result = await store.append([numberedEntry(mine)]);
    if (!result.ok) throw new Error(JSON.stringify(result));
    // Synchronous, so that the line is out before the process can die.
    writeSync(1, `${mine}\n`);
  }
}

await Promise.all(Array.from({ length: Number(atOnce) }, recordForEver)).catch((error: unknown) => {
  writeSync(2, `${String(error)}\n`);
  process.exit(3);
});
