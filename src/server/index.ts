/** The server: HTTP on this computer's loopback address, or for paired devices of the home network. */
export { type Device, Devices } from './access/devices.ts';
export { type Invitation, invite } from './access/invitation.ts';
export { networkAddresses } from './access/local-names.ts';
export {
  hashedPassword,
  leastPasswordLength,
  type RunningFacility,
  startFacility,
  startWatchedWorker,
} from './start-facility.ts';
export { reckonFor } from './reckoning/reckon-for.ts';
export { application } from './application.ts';
export { LiveHousehold } from './live-household.ts';
export type { Shell } from './shell.ts';
export { type RunningServer, type ServerOptions, startServer } from './start-server.ts';
export { SensorRegister } from './sensors/sensor-register.ts';
