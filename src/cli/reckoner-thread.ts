/** Starts the thread in which a server's answers are reckoned. */
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';

/** What the thread is started with. */
export interface ReckonerData {
  /** The household's folder, where its work is kept; null = it is kept nowhere. */
  folder: string | null;
}

export function reckonerThread(folder: string | null): Worker {
  const workerData: ReckonerData = { folder };
  return new Worker(programFile(), { workerData });
}

/** It is built beside the program, whose parts are a folder below. */
function programFile(): string {
  return join(dirname(fileURLToPath(import.meta.url)), '..', 'reckoner.js');
}
