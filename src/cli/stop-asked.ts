/** When a process that runs on and on is to end. */
import { once } from 'node:events';

/** Resolves at Ctrl-C, or at the signal by which a system stops its services. */
export async function stopAsked(): Promise<void> {
  await Promise.race([once(process, 'SIGINT'), once(process, 'SIGTERM'), once(process, 'SIGHUP')]);
}
