/**
 * Server-sent events: an open page hears of new entries at once and asks again. The stream ends as soon as
 * its device is shut out or its session has ended.
 */
import { type SSEStreamingApi, streamSSE } from 'hono/streaming';
import { callerOf, type Standing } from '../access/caller.ts';
import type { Api, ApiContext } from '../api-context.ts';

/** How soon a page hears of what another process wrote, such as the command line. */
const lookMs = 2_000;
/** Looks between remarks that keep proxies from closing a quiet connection. */
const looksPerRemark = 10;

export function addEventRoute(api: Api, { household }: ApiContext): void {
  api.get('/events', (c) => {
    const { standing } = callerOf(c);
    return streamSSE(c, async (stream) => {
      const say = (cursor: number) => void stream.writeSSE({ event: 'entries', data: JSON.stringify({ cursor }) });
      const stops = [household.onChange(say)];
      if (standing) stops.push(standing.onChange(() => void endUnlessHolds(stream, standing)));
      const stop = () => stops.forEach((each) => each());
      stream.onAbort(stop);
      say(household.lastCursor);
      const open = () => !stream.aborted && !stream.closed && !household.closed;
      for (let looks = 1; open(); looks++) {
        await stream.sleep(lookMs);
        if (standing) await endUnlessHolds(stream, standing);
        if (open()) await household.catchUp();
        if (open() && looks % looksPerRemark === 0) await stream.write(': still here\n\n');
      }
      stop();
    });
  });
}

async function endUnlessHolds(stream: SSEStreamingApi, standing: Standing): Promise<void> {
  // A database that does not answer has shut nobody out; the next look asks again.
  const holds = stream.closed || (await standing.holds().catch(() => true));
  if (!holds) await stream.close();
}
