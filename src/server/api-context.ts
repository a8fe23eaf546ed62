/** What the routes share: the router they are added to, and what they answer from. */
import type { OpenAPIHono } from '@hono/zod-openapi';
import type { EntrySources, ReadReceipts } from '../store/receipts.ts';
import type { LiveHousehold } from './live-household.ts';
import type { LiveSensors } from './sensors/live-sensors.ts';
import type { Shell } from './shell.ts';

export type Api = OpenAPIHono;

export interface ApiContext {
  household: LiveHousehold;
  shell: Shell;
  version: string;
  /** Null for a household without a folder of its own. */
  sensors: LiveSensors | null;
  /** Where people see to their sessions and keys; left out where nobody signs in. */
  accountPage?: string;
  /** Where the store looks up who sends the entries that it is given; left out where it keeps no receipts. */
  sources?: EntrySources;
  /** Who recorded what; left out where that is not kept. */
  receipts?: ReadReceipts;
}
