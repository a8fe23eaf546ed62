/** Server-sent events: an open page hears of new entries at once and asks again. */
import { streamSSE } from 'hono/streaming';
import type { Api, ApiContext } from '../api-context.ts';

/** How soon a page hears of what another process wrote, such as the command line. */
const lookMs = 2_000;
/** Looks between remarks that keep proxies from closing a quiet connection. */
const looksPerRemark = 10;

export function addEventRoute(api: Api, { household }: ApiContext): void {
  api.get('/events', (c) =>
    streamSSE(c, async (stream) => {
      const say = (cursor: number) => void stream.writeSSE({ event: 'entries', data: JSON.stringify({ cursor }) });
      const stop = household.onChange(say);
      stream.onAbort(stop);
      say(household.lastCursor);
      const open = () => !stream.aborted && !stream.closed && !household.closed;
      for (let looks = 1; open(); looks++) {
        await stream.sleep(lookMs);
        if (open()) await household.catchUp();
        if (looks % looksPerRemark === 0) await stream.write(': still here\n\n');
      }
      stop();
    }),
  );
}
