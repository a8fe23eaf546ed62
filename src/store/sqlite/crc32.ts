/** CRC-32 as in ISO/IEC 3309 and zip files, of a text's UTF-8 bytes: finds damage, not malice. */

const table = Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let bit = 0; bit < 8; bit++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c;
});

/** @example crc32('123456789') // => 0xcbf43926 */
export function crc32(text: string): number {
  const bytes = Buffer.from(text, 'utf8');
  let c = 0xffffffff;
  for (let i = 0; i < bytes.length; i++) c = (table[(c ^ (bytes[i] as number)) & 0xff] as number) ^ (c >>> 8);
  return (c ^ 0xffffffff) >>> 0;
}
