/** The program of a thread that reckons: answers a server's questions, and keeps its work for the next start. */
import { parentPort, workerData } from 'node:worker_threads';
import { keptWorkChanges } from '../app/index.ts';
import { reckonFor } from '../server/index.ts';
import { keepWork, recallWorkOf } from './kept-work-file.ts';
import type { ReckonerData } from './reckoner-thread.ts';

const { folder } = workerData as ReckonerData;
if (folder !== null) recallWorkOf(folder);
const recalled = keptWorkChanges();
let keptOnce = false;

/** The first answer's work is much of every other's; a note's is soon done again. */
function keepOnce(): void {
  if (folder !== null && !keptOnce && keptWorkChanges() > recalled) keepWork(folder);
  keptOnce = true;
}

if (parentPort) reckonFor(parentPort, keepOnce);
