/** The server: HTTP on this computer's loopback address. */
export { LiveHousehold } from './live-household.ts';
export type { Shell } from './shell.ts';
export { application, type RunningServer, type ServerOptions, startServer } from './start-server.ts';
