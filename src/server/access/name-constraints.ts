/**
 * The limits of the household's own certificate authority (RFC 5280, section 4.2.1.10): it can vouch for
 * addresses of home networks and for names ending in .local, and for no site of the internet.
 */

/** Private addresses: RFC 1918, RFC 3927, and RFC 4193 for IPv6. Address and mask, as the RFC wants them. */
const privateNetworks: [address: number[], mask: number[]][] = [
  [
    [127, 0, 0, 0],
    [255, 0, 0, 0],
  ],
  [
    [10, 0, 0, 0],
    [255, 0, 0, 0],
  ],
  [
    [172, 16, 0, 0],
    [255, 240, 0, 0],
  ],
  [
    [192, 168, 0, 0],
    [255, 255, 0, 0],
  ],
  [
    [169, 254, 0, 0],
    [255, 255, 0, 0],
  ],
  [
    [0xfc, ...zeros(15)],
    [0xfe, ...zeros(15)],
  ],
];
const names = ['local', 'localhost'];

const [sequence, permitted, dnsName, ipAddress] = [0x30, 0xa0, 0x82, 0x87];

/** The extension's value in DER. */
export function homeNetworksOnly(): Uint8Array<ArrayBuffer> {
  const bases = [
    ...names.map((name) => der(dnsName, [...Buffer.from(name, 'ascii')])),
    ...privateNetworks.map(([address, mask]) => der(ipAddress, [...address, ...mask])),
  ];
  const subtrees = bases.flatMap((base) => der(sequence, base));
  return Uint8Array.from(der(sequence, der(permitted, subtrees)));
}

/** One tag with its length, in the short form or with one or two bytes. */
function der(tag: number, content: number[]): number[] {
  const { length } = content;
  if (length < 0x80) return [tag, length, ...content];
  if (length < 0x100) return [tag, 0x81, length, ...content];
  return [tag, 0x82, length >> 8, length & 0xff, ...content];
}

function zeros(count: number): number[] {
  return new Array<number>(count).fill(0);
}
