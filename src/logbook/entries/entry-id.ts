/** Ids of entries: UUID version 7 (RFC 9562), which sort by the time they were made. */

/** Where a shell's clock and chance come in. */
export interface IdSources {
  /** Milliseconds since 1970. */
  now(): number;
  /** `n` random bytes. */
  randomBytes(n: number): Uint8Array;
}

/**
 * A maker of ids that never goes backwards on one device: within a millisecond, or when the clock is
 * set back, the 12 bits after the version count up, and then the time itself does.
 */
export function entryIdMaker(sources: IdSources): () => string {
  let time = -1;
  let sequence = 0;
  return () => {
    const now = Math.max(0, Math.floor(sources.now()));
    const random = sources.randomBytes(10);
    if (now > time) {
      time = now;
      // The top bit is left clear so that there is room to count.
      sequence = (((random[0] as number) << 8) | (random[1] as number)) & 0x7ff;
    } else if (++sequence > 0xfff) {
      time += 1;
      sequence = 0;
    }
    return uuidText(time, sequence, random);
  };
}

function uuidText(time: number, sequence: number, random: Uint8Array): string {
  const variant = ((random[2] as number) & 0x3f) | 0x80;
  const tail = [...random.subarray(3, 10)].map((b) => hex(b, 2)).join('');
  const clock = hex(time, 12);
  return `${clock.slice(0, 8)}-${clock.slice(8)}-7${hex(sequence, 3)}-${hex(variant, 2)}${tail.slice(0, 2)}-${tail.slice(2)}`;
}

function hex(value: number, digits: number): string {
  return value.toString(16).padStart(digits, '0');
}
