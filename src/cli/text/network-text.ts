/** What is printed about the home network: where the server is, and how a device gets in. */
import { renderUnicodeCompact } from 'uqr';
import type { Invitation, RunningServer } from '../../server/index.ts';

export function networkLines({ addresses, publicUrl }: NonNullable<RunningServer['network']>): string[] {
  if (publicUrl !== undefined) return [`Behind your proxy: ${publicUrl}`, ...howToPair];
  return [
    ...addresses.http.map((address) => `On the network: ${address}`),
    ...addresses.https.map((address) => `With HTTPS: ${address} (how: /network/certificate)`),
    ...howToPair,
  ];
}

const howToPair = ['A device is let in by a code: flylarder devices add, or /network/devices here.'];

/** The code, and the address with it as a QR code where it is known. */
export function invitationLines({ code, until }: Invitation, pairAddress: string | null): string[] {
  return [
    ...(pairAddress === null ? [] : [...renderUnicodeCompact(pairAddress, { border: 2 }).split('\n'), pairAddress]),
    `Code: ${code}`,
    `Good once, until ${until.slice(11, 16)} UTC. Open /network/pair of the server on the device and type it.`,
  ];
}
