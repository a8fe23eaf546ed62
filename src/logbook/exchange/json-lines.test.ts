import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { randomLogbook } from '../../../tests/replicas/random-logbook.ts';
import { canonicalText } from '../entries/canonical-text.ts';
import type { Entry, EntryDraft } from '../entries/entry.ts';
import { type ReadOptions, readJsonLines, readLogbook, writeJsonLines } from './json-lines.ts';
import { decodeUtf8 } from './utf8.ts';

const encoder = new TextEncoder();

/** The bytes in pieces of the given sizes, over and over. */
async function* pieces(bytes: Uint8Array, sizes: readonly number[]): AsyncGenerator<Uint8Array> {
  for (let at = 0, i = 0; at < bytes.length; i++) {
    const size = Math.max(1, sizes[i % sizes.length] as number);
    yield bytes.subarray(at, at + size);
    at += size;
  }
}

async function read(text: string | Uint8Array, options: Partial<ReadOptions> = {}) {
  const bytes = typeof text === 'string' ? encoder.encode(text) : text;
  return readLogbook(pieces(bytes, [65536]), { file: 'log.jsonl', ...options });
}

async function written(entries: readonly Entry[]): Promise<string> {
  let text = '';
  for await (const line of writeJsonLines(entries)) text += line;
  return text;
}

const log = randomLogbook(7, 40);
const [first] = log as [Entry];
const line = canonicalText(first);

describe('JSON Lines', () => {
  it('what is written is read back byte for byte, however the stream is cut', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.integer(),
        fc.array(fc.integer({ min: 1, max: 300 }), { minLength: 1 }),
        async (seed, sizes) => {
          const text = await written(randomLogbook(seed, 30));
          const back = await readLogbook(pieces(encoder.encode(text), sizes), { file: 'x' });
          expect(back.ok && (await written(back.value.map((r) => r.entry)))).toBe(text);
        },
      ),
      { numRuns: 30 },
    );
  });

  it('fields may come in any order; the canonical text is one', async () => {
    const turned = JSON.stringify(Object.fromEntries(Object.entries(first).reverse()));
    expect(turned).not.toBe(line);
    const back = await read(turned);
    expect(back.ok && back.value.map((r) => canonicalText(r.entry))).toEqual([line]);
  });

  it('an entry has one text whatever the order of its fields, inside them too', () => {
    const setting = { ...first, kind: 'household', purchase: { leadDays: 3, pricePerCup: 9 }, currency: 'EUR' };
    const turned = { currency: 'EUR', purchase: { pricePerCup: 9, leadDays: 3 }, ...first, kind: 'household' };
    expect(canonicalText(turned as Entry)).toBe(canonicalText(setting as Entry));
  });

  it('a reader may use its buffer again', async () => {
    const bytes = encoder.encode(await written(log));
    const buffer = new Uint8Array(7);
    async function* reused() {
      for (let at = 0; at < bytes.length; at += 7) {
        const part = bytes.subarray(at, at + 7);
        buffer.set(part);
        yield buffer.subarray(0, part.length);
      }
    }
    const back = await readLogbook(reused(), { file: 'x' });
    expect(back.ok && (await written(back.value.map((r) => r.entry)))).toBe(await written(log));
  });

  it('takes a byte order mark, carriage returns, blank lines and a missing last line feed', async () => {
    const back = await read(`\ufeff${line}\r\n\r\n  \n${canonicalText(log[1] as Entry)}`);
    expect(back.ok && back.value.map((r) => r.line)).toEqual([1, 4]);
  });

  it('completes lines written by hand, when asked to', async () => {
    const hand = '{"kind":"stock","on":"2026-06-01","item":"agar","amount":500,"unit":"g"}\n';
    const complete = (draft: EntryDraft) =>
      ({ id: first.id, recordedAt: '2026-06-01T10:00:00Z', by: 'Ana', ...draft }) as Entry;
    const back = await read(hand, { complete });
    expect(back.ok && back.value[0]?.entry).toMatchObject({ id: first.id, item: 'agar' });
    expect((await read(hand)).ok).toBe(false);
  });
});

describe('bad files', () => {
  const utf16 = (text: string) =>
    new Uint8Array([0xff, 0xfe, ...[...text].flatMap((c) => [c.charCodeAt(0) & 255, c.charCodeAt(0) >> 8])]);
  const cases: [name: string, file: string | Uint8Array, where: string, found: RegExp][] = [
    ['a cut-off last line', `${line}\n${line.slice(0, 70)}`, 'log.jsonl, line 2', /breaks off after 70 bytes/],
    ['no JSON', `${line}\nculture M1 started\n`, 'log.jsonl, line 2', /not JSON/],
    ['two objects on a line', `${line}${line}\n`, 'log.jsonl, line 1', /not JSON/],
    [
      'Latin-1',
      new Uint8Array([...encoder.encode('{"kind":"note","text":"sp'), 0xe4, ...encoder.encode('t"}\n')]),
      'log.jsonl, line 1',
      /not UTF-8/,
    ],
    ['UTF-16', utf16(`${line}\n`), 'log.jsonl, line 1', /UTF-16/],
    ['gzip', new Uint8Array([0x1f, 0x8b, 8, 0, 0, 0, 10, 4]), 'log.jsonl, line 1', /compressed/],
    ['a bad field', `${line}\n\n{"kind":"moved","on":"2026-06-01"}\n`, 'log.jsonl, line 3, culture', /nothing/],
    ['an unknown kind', `{"kind":"hatched"}\n`, 'log.jsonl, line 1, kind', /hatched/],
    ['deep nesting', `${'['.repeat(400_000)}\n`, 'log.jsonl, line 1', /./],
  ];
  for (const [name, file, where, found] of cases) {
    it(name, async () => {
      const result = await read(file, { complete: (d) => d as Entry });
      expect(result.ok).toBe(false);
      const problem = result.ok ? undefined : result.problems.find((p) => p.where === where);
      expect(problem?.found).toMatch(found);
    });
  }

  it('a line of 100 MB is refused without being kept, and the lines after it are read', async () => {
    const part = new Uint8Array(1 << 20).fill(0x61);
    async function* huge() {
      yield encoder.encode(`${line}\n`);
      for (let i = 0; i < 100; i++) yield part;
      yield encoder.encode(`\n${line}\n`);
    }
    const before = process.memoryUsage().arrayBuffers;
    let most = 0;
    const found: string[] = [];
    for await (const result of readJsonLines(huge(), { file: 'big.jsonl' })) {
      most = Math.max(most, process.memoryUsage().arrayBuffers - before);
      found.push(result.ok ? `line ${result.value.line}` : (result.problems[0]?.found ?? ''));
    }
    expect(found).toEqual(['line 1', 'a line of 104857600 bytes', 'line 3']);
    expect(most).toBeLessThan(20 * (1 << 20));
  });

  it('gives up after twenty problems', async () => {
    const result = await read('nonsense\n'.repeat(1000));
    expect(result.ok ? 0 : result.problems.length).toBe(20);
  });
});

describe('UTF-8', () => {
  const strict = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });
  const platform = (bytes: Uint8Array) => {
    try {
      return strict.decode(bytes);
    } catch {
      return null;
    }
  };
  it("reads what the platform's own decoder reads, and refuses what it refuses", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 12 }), (bytes) => decodeUtf8(bytes) === platform(bytes)),
      { numRuns: 3000 },
    );
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary' }),
        (text) => decodeUtf8(encoder.encode(text)) === platform(encoder.encode(text)),
      ),
    );
  });
  it('agrees on every sequence of a lead byte with the borders of what may follow', () => {
    const borders = [0x00, 0x7f, 0x80, 0x8f, 0x90, 0x9f, 0xa0, 0xbf, 0xc0, 0xff];
    for (let lead = 0; lead < 256; lead++) {
      for (const b of borders) {
        for (const c of borders) {
          const bytes = new Uint8Array([lead, b, c, 0x80]);
          expect(decodeUtf8(bytes), bytes.join(' ')).toBe(platform(bytes));
        }
      }
    }
  });
});
