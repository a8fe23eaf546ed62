/** The server's logbook over HTTP: read it as JSON Lines after a cursor, add entries, hear of new ones. */
import type { Problem } from '../../foundation/index.ts';
import type { Entry } from '../../logbook/index.ts';

const entriesPath = 'api/v1/entries';
const eventsPath = 'api/v1/events';
const jsonLines = 'application/x-ndjson';
/** The server takes a batch of at most 16 MiB; ours stay well below it. */
const entriesPerBatch = 10_000;

export interface ServerPart {
  entries: Entry[];
  /** How far this part goes; the next one begins after it. */
  cursor: number;
}

/** The server's entries after a cursor, or null where no server of ours answers. */
export async function entriesOfServer(after = 0): Promise<ServerPart | null> {
  try {
    const response = await fetch(`${entriesPath}?after=${after}`, { headers: { accept: jsonLines } });
    const cursor = response.headers.get('flylarder-cursor');
    if (!response.ok || cursor === null) return null;
    return { entries: entriesOfLines(await response.text()), cursor: Number(cursor) };
  } catch {
    return null;
  }
}

export function entriesOfLines(text: string): Entry[] {
  return text
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => JSON.parse(line) as Entry);
}

export function linesOfEntries(entries: Entry[]): string {
  return entries.map((entry) => `${JSON.stringify(entry)}\n`).join('');
}

export type Sent = { how: 'kept' } | { how: 'unreachable' } | { how: 'refused'; problems: Problem[] };

/** Hands entries to the server. Unreachable is no failure of the entries: they wait on the device. */
export async function sendToServer(entries: Entry[]): Promise<Sent> {
  for (let from = 0; from < entries.length; from += entriesPerBatch) {
    const sent = await sendBatch(entries.slice(from, from + entriesPerBatch));
    if (sent.how !== 'kept') return sent;
  }
  return { how: 'kept' };
}

async function sendBatch(entries: Entry[]): Promise<Sent> {
  try {
    const response = await fetch(entriesPath, {
      method: 'POST',
      headers: { 'content-type': jsonLines },
      body: linesOfEntries(entries),
    });
    if (response.ok) return { how: 'kept' };
    if (response.status >= 500) return { how: 'unreachable' };
    return { how: 'refused', problems: await problemsOf(response) };
  } catch {
    return { how: 'unreachable' };
  }
}

/** Calls `changed` whenever the server's logbook has grown, and after each reconnection. */
export function hearServer(changed: () => void): void {
  new EventSource(eventsPath).addEventListener('entries', changed);
}

async function problemsOf(response: Response): Promise<Problem[]> {
  const body = (await response.json().catch(() => null)) as { problems?: Problem[] } | null;
  return (
    body?.problems ?? [
      { where: entriesPath, found: `HTTP ${response.status}`, expected: 'entries that the server takes' },
    ]
  );
}
