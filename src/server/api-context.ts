/** What the routes share: the router they are added to, and what they answer from. */
import type { OpenAPIHono } from '@hono/zod-openapi';
import type { LiveHousehold } from './live-household.ts';
import type { Shell } from './shell.ts';

export type Api = OpenAPIHono;

export interface ApiContext {
  household: LiveHousehold;
  shell: Shell;
  version: string;
}
