/** UTF-8 (RFC 3629) to text, strictly: no overlong forms, no surrogates, nothing beyond U+10FFFF. */

const chunk = 8192;

/** The text, or null when the bytes are not UTF-8. */
export function decodeUtf8(bytes: Uint8Array): string | null {
  let text = '';
  for (let at = 0; at < bytes.length; ) {
    const plain = asciiRun(bytes, at);
    for (let from = at; from < plain; from += chunk) {
      text += String.fromCharCode(...bytes.subarray(from, Math.min(from + chunk, plain)));
    }
    at = plain;
    if (at < bytes.length) {
      const length = sequenceLength(bytes[at] as number);
      const code = length === 0 ? -1 : codePoint(bytes, at, length);
      if (code < 0) return null;
      text += String.fromCodePoint(code);
      at += length;
    }
  }
  return text;
}

function asciiRun(bytes: Uint8Array, from: number): number {
  let at = from;
  while (at < bytes.length && (bytes[at] as number) < 0x80) at++;
  return at;
}

function sequenceLength(lead: number): number {
  if (lead >= 0xc2 && lead <= 0xdf) return 2;
  if (lead >= 0xe0 && lead <= 0xef) return 3;
  return lead >= 0xf0 && lead <= 0xf4 ? 4 : 0;
}

const leastByLength = [0, 0, 0x80, 0x800, 0x10000];

function codePoint(bytes: Uint8Array, at: number, length: number): number {
  if (at + length > bytes.length) return -1;
  let code = (bytes[at] as number) & (0xff >> (length + 1));
  for (let i = 1; i < length; i++) {
    const next = bytes[at + i] as number;
    if ((next & 0xc0) !== 0x80) return -1;
    code = (code << 6) | (next & 0x3f);
  }
  const isSurrogate = code >= 0xd800 && code <= 0xdfff;
  return code < (leastByLength[length] as number) || code > 0x10ffff || isSurrogate ? -1 : code;
}
