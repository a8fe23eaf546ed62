/** The names and addresses under which this computer is reached from its own network. */
import { hostname, networkInterfaces } from 'node:os';
import { isIPv6 } from 'node:net';

/** Addresses of the network cards, IPv4 first, without the loopback and without those of one link only. */
export function networkAddresses(): string[] {
  const all = Object.values(networkInterfaces()).flatMap((card) => card ?? []);
  const outside = all.filter(({ internal, address }) => !internal && !address.toLowerCase().startsWith('fe80:'));
  return [...outside]
    .sort((a, b) => (a.family === b.family ? 0 : a.family === 'IPv4' ? -1 : 1))
    .map(({ address }) => address);
}

/** The computer's name as it is announced by multicast DNS, which many home networks do. */
export function localName(): string {
  return `${hostname().split('.')[0]?.toLowerCase()}.local`;
}

/** As it stands in a Host header or an address. */
export function inUrl(address: string): string {
  return isIPv6(address) ? `[${address}]` : address;
}

/** Every name that a Host header may carry on the home network. */
export function namesOnNetwork(): Set<string> {
  return new Set([hostname().toLowerCase(), localName(), ...networkAddresses().map(inUrl)]);
}
