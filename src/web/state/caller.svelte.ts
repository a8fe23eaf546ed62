/**
 * Who uses the page, where people have accounts: a reader is shown no way to record, which the server would
 * refuse. What was said last holds while there is no network.
 */
import { remember, remembered } from './device-memory.ts';

export interface Caller {
  name: string;
  role: 'keeper' | 'helper' | 'reader';
  /** Where sessions and keys are seen to; null where nobody signs in. */
  accountPage: string | null;
}

const memory = 'flylarder caller';
/** Without a server, whoever holds the device keeps the logbook. */
const ownDevice: Caller = { name: '', role: 'keeper', accountPage: null };

let caller = $state.raw<Caller>(kept());

export function currentCaller(): Caller {
  return caller;
}

export function mayRecord(): boolean {
  return caller.role !== 'reader';
}

/** Asks the server, where there is one. */
export async function askCaller(): Promise<void> {
  const answer = await fetch('api/v1/caller').catch(() => null);
  const isOurs = answer?.ok && answer.headers.get('content-type')?.includes('json');
  if (!answer || !isOurs) return;
  caller = (await answer.json()) as Caller;
  remember(memory, JSON.stringify(caller));
}

function kept(): Caller {
  try {
    return { ...ownDevice, ...(JSON.parse(remembered(memory) ?? '{}') as Partial<Caller>) };
  } catch {
    return ownDevice;
  }
}
