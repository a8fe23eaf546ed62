/** A household that is open to its home network: its devices, its names, and the way in for new ones. */
import type { Shell } from '../shell.ts';
import type { KnownNames } from '../request-guard.ts';
import { isLoopbackName } from '../request-guard.ts';
import { Devices } from './devices.ts';
import { namesOnNetwork } from './local-names.ts';

export interface NetworkOptions {
  /** The household's folder, where devices and certificates are kept. */
  folder: string;
  /** Where a proxy in front shows this server; then nobody comes from this computer, not even its own user. */
  publicUrl?: string;
}

export interface Network extends NetworkOptions {
  devices: Devices;
  shell: Shell;
  /** Where devices reach the server, best first; known once it listens. */
  addresses: NetworkAddresses;
}

export interface NetworkAddresses {
  http: string[];
  https: string[];
  /** PEM and fingerprint of the authority behind `https`; null behind a proxy. */
  authority: { pem: string; fingerprint: string } | null;
}

export function network(options: NetworkOptions, shell: Shell): Network {
  const addresses: NetworkAddresses = { http: [], https: [], authority: null };
  return { ...options, devices: new Devices(options.folder), shell, addresses };
}

/** Names are looked up when they are asked for: the router may give this computer another address any day. */
export function networkNames({ publicUrl }: NetworkOptions): KnownNames {
  const publicName = publicUrl === undefined ? undefined : new URL(publicUrl);
  return {
    isKnown: (name) => isLoopbackName(name) || name === publicName?.hostname || namesOnNetwork().has(name),
    expected: publicName?.host ?? 'an address or name of this computer',
    ...(publicName && { publicOrigin: publicName.origin }),
  };
}
