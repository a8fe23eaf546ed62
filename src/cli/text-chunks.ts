/** Lines gathered into larger pieces, so that a file of a million lines is not a million writes. */

const chunkLength = 65_536;

export function* textChunks(lines: Iterable<string>): Generator<string> {
  let chunk = '';
  for (const line of lines) {
    chunk += line;
    if (chunk.length < chunkLength) continue;
    yield chunk;
    chunk = '';
  }
  if (chunk !== '') yield chunk;
}
