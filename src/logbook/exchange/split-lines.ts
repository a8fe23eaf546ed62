/** A stream of bytes as lines, never holding more than one line of the allowed length. */

export interface ByteLine {
  line: number;
  /** Without line end; null when the line is longer than allowed (its bytes are not kept). */
  bytes: Uint8Array | null;
  length: number;
  /** False for a last line that no line end follows. */
  ended: boolean;
}

const newline = 0x0a;

/** Lines end with a line feed; a carriage return before it is dropped. An empty last line is none. */
export async function* splitLines(chunks: AsyncIterable<Uint8Array>, maxLineBytes: number): AsyncGenerator<ByteLine> {
  const pending = new PendingLine(maxLineBytes);
  for await (const chunk of chunks) {
    let from = 0;
    for (let end = chunk.indexOf(newline); end >= 0; end = chunk.indexOf(newline, from)) {
      pending.add(chunk.subarray(from, end));
      yield pending.take(true);
      from = end + 1;
    }
    pending.add(chunk.subarray(from));
  }
  if (pending.length > 0) yield pending.take(false);
}

class PendingLine {
  length = 0;
  private line = 0;
  private parts: Uint8Array[] = [];
  private readonly maxLineBytes: number;

  constructor(maxLineBytes: number) {
    this.maxLineBytes = maxLineBytes;
  }

  add(part: Uint8Array): void {
    this.length += part.length;
    if (this.length > this.maxLineBytes) this.parts = [];
    // A copy: the reader may use its buffer again.
    else if (part.length > 0) this.parts.push(part.slice());
  }

  take(ended: boolean): ByteLine {
    const { length } = this;
    const bytes = length > this.maxLineBytes ? null : withoutReturn(joined(this.parts, length));
    this.length = 0;
    this.parts = [];
    this.line += 1;
    return { line: this.line, bytes, length, ended };
  }
}

function joined(parts: readonly Uint8Array[], length: number): Uint8Array {
  if (parts.length === 1) return parts[0] as Uint8Array;
  const all = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

function withoutReturn(bytes: Uint8Array): Uint8Array {
  return bytes[bytes.length - 1] === 0x0d ? bytes.subarray(0, -1) : bytes;
}
