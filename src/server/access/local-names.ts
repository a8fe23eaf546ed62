/** The names and addresses under which this computer is reached from its own network. */
import { hostname, networkInterfaces } from 'node:os';

/** IPv4 addresses of this computer's network cards, those of home networks first. */
export function networkAddresses(): string[] {
  const all = Object.values(networkInterfaces()).flatMap((card) => card ?? []);
  const outside = all.filter(({ internal, family }) => !internal && family === 'IPv4').map(({ address }) => address);
  return [...outside.filter(isPrivate), ...outside.filter((address) => !isPrivate(address))];
}

/** In a home network's range: RFC 1918 and RFC 3927. */
export function isPrivate(address: string): boolean {
  return /^(10\.|192\.168\.|172\.(1[6-9]|2\d|3[01])\.|169\.254\.)/.test(address);
}

/** The computer's name as it is announced by multicast DNS, which many home networks do. */
export function localName(): string {
  return `${hostname().split('.')[0]?.toLowerCase()}.local`;
}

/** Every name that a Host header may carry on the home network. */
export function namesOnNetwork(): Set<string> {
  return new Set([hostname().toLowerCase(), localName(), ...networkAddresses()]);
}
