/** Server-sent events: an open page hears of new entries at once and asks again. */
import { streamSSE } from 'hono/streaming';
import type { Api, ApiContext } from '../api-context.ts';

/** A remark now and then keeps proxies from closing a quiet connection. */
const quietMs = 25_000;

export function addEventRoute(api: Api, { household }: ApiContext): void {
  api.get('/events', (c) =>
    streamSSE(c, async (stream) => {
      const say = (cursor: number) => void stream.writeSSE({ event: 'entries', data: JSON.stringify({ cursor }) });
      const stop = household.onChange(say);
      stream.onAbort(stop);
      say(household.lastCursor);
      while (!stream.aborted && !stream.closed) {
        await stream.sleep(quietMs);
        await stream.write(': still here\n\n');
      }
      stop();
    }),
  );
}
