import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { emptyFolder, flylarder } from './command-line.ts';

const good = '{"kind":"note","on":"2026-10-01","text":"fine"}';
const started = '{"kind":"started","on":"2026-10-05","culture":"M1","strain":"melanogaster","founders":50}';
const line = (fields: object) => JSON.stringify({ on: '2026-10-06', ...fields });

/** What is wrong with a file, its content, and what the message must name. */
const badFiles: [what: string, content: string | Buffer, says: RegExp][] = [
  ['an unknown kind', `${good}\n${line({ kind: 'danced' })}\n`, /line 2, kind: found "danced"; expected one of /],
  ['an impossible day', `${line({ kind: 'note', text: 'x', on: '2026-02-30' })}\n`, /line 1, on: found "2026-02-30"/],
  [
    'a day after it was written down',
    `${line({ kind: 'note', text: 'x', on: '2199-01-01' })}\n`,
    /line 1, on: found 2199/,
  ],
  [
    'a negative number',
    `${started}\n${line({ kind: 'harvested', culture: 'M1', flies: -3 })}\n`,
    /line 2, flies: found -3/,
  ],
  [
    'an absurd number',
    `${started}\n${line({ kind: 'harvested', culture: 'M1', flies: 1e12 })}\n`,
    /line 2, flies: found 1000000000000/,
  ],
  [
    'an animal of ten kilograms',
    `${line({ kind: 'weighed', group: 'frogs', massG: 10_000 })}\n`,
    /line 1, massG: found 10000; expected a number from 0.0001 to 200/,
  ],
  [
    'a billion animals',
    `${line({ kind: 'group', group: 'frogs', count: 1e9, fliesPerFeeding: 20, strain: 'melanogaster' })}\n`,
    /line 1, count: found 1000000000/,
  ],
  [
    'a number as text',
    `${started}\n${line({ kind: 'harvested', culture: 'M1', flies: '40' })}\n`,
    /line 2, flies: found "40"/,
  ],
  [
    'an unknown field',
    `${line({ kind: 'note', text: 'x', colour: 'red' })}\n`,
    /line 1, colour: found an unknown field/,
  ],
  [
    'a harvest before the start',
    `${started}\n{"kind":"harvested","on":"2026-10-01","culture":"M1","flies":4}\n`,
    /line 2.*M1|line 2.*2026-10-01/,
  ],
  [
    'a harvest after the end',
    `${started}\n{"kind":"ended","on":"2026-10-07","culture":"M1","reason":"mould"}\n{"kind":"harvested","on":"2026-10-09","culture":"M1","flies":4}\n`,
    /line 3/,
  ],
  ['a harvest of no known culture', `${line({ kind: 'harvested', culture: 'M9', flies: 4 })}\n`, /line 1.*M9/],
  ['a line that breaks off', `${good}\n{"kind":"note","on":"2026-1`, /line 2: found a last line that breaks off/],
  ['text that is not JSON', `${good}\nhello\n`, /line 2: found text that is not JSON/],
  ['a list in place of an entry', `[]\n`, /line 1: found \[\]/],
  ['UTF-16', Buffer.from(`${good}\n`, 'utf16le'), /line 1\b.*: found .*UTF-16/],
  [
    'Latin-1',
    Buffer.from('{"kind":"note","on":"2026-10-01","text":"f\xfcr"}\n', 'latin1'),
    /line 1: found bytes that are not UTF-8/,
  ],
  ['a compressed file', gzipSync(good), /line 1: found a compressed file/],
  ['a line of 100 MB', `${good}\n"${'x'.repeat(100 * 1024 * 1024)}"\n`, /line 2: found a line of 104857602 bytes/],
  ['an id twice with other content', [1, 2].map((n) => withId(`text ${n}`)).join(''), /line 2/],
];

function withId(text: string): string {
  const id = '019a0000-0000-7000-8000-000000000001';
  return `${JSON.stringify({ id, kind: 'note', on: '2026-10-01', recordedAt: '2026-10-01T10:00:00.000Z', by: 'me', text })}\n`;
}

describe('a file with anything wrong: exit status 2, its place named, nothing written', () => {
  for (const [what, content, says] of badFiles) {
    it(what, () => {
      const folder = emptyFolder();
      writeFileSync(join(folder, 'log.jsonl'), content);
      const outcome = flylarder(folder, ['record', 'log.jsonl']);
      expect(outcome).toMatchObject({ status: 2, out: '' });
      expect(outcome.err).toMatch(/^log\.jsonl, /m);
      expect(outcome.err).toMatch(says);
      expect(outcome.err.length).toBeLessThan(8000);
      expect(existsSync(join(folder, 'household'))).toBe(false);
    });
  }

  it('leaves a household that is there as it was', () => {
    const folder = emptyFolder();
    flylarder(folder, ['record', '-'], `${started}\n`);
    const before = flylarder(folder, ['export']).out;
    for (const [what, content] of badFiles.filter(([what]) => !what.includes('100 MB'))) {
      expect(flylarder(folder, ['record', '-'], content).status, what).toBe(2);
    }
    expect(flylarder(folder, ['export']).out).toBe(before);
  }, 60_000);
});

/** Command lines that are wrong, and what the message must say. */
const badCommands: [args: string[], says: RegExp][] = [
  [
    ['backup', '--household', 'frogs'],
    /--household: found a household in a database.*expected --data DIR;.*facility\.md/s,
  ],
  [['doctor', '--database', 'postgres://x/y'], /--database: found a household in a database.*facility\.md/s],
  [['todya'], /unknown command "todya"; expected today/],
  [['zzz'], /unknown command "zzz"; expected one of serve, devices/],
  [['today', '--sede', '3'], /--sede: found an option this command does not have; expected --seed/],
  [['today', '--seed', 'many'], /--seed: found "many"; expected a whole number/],
  [['today', '--seed'], /--seed: found no value; expected --seed N/],
  [['today', '--on', '2026-02-30'], /--on: found 2026-02-30, a day that does not exist/],
  [['today', '--json=yes'], /--json: found the value "yes"; expected no value/],
  [['today', 'now'], /today: found "now"; expected flylarder today/],
  [['today', '--data', 'a', '--logbook', 'b'], /--logbook: found --data beside it; expected one of the two/],
  [['today', '--logbook', 'missing.jsonl'], /missing\.jsonl: found no such file/],
  [['forecast', '--weeks', '0'], /--weeks: found "0"; expected a whole number from 1 to 104/],
  [['record'], /record: found nothing to record/],
  [['record', 'harvestd'], /neither a file nor a kind of entry; expected the kind "harvested"/],
  [['record', 'harvested', 'culture=M1', 'fleis=4'], /harvested, fleis: found an unknown field; expected flies/],
  [['record', 'harvested', 'culture=M1', 'flies=four'], /harvested, flies: found "four"/],
  [['record', 'harvested', 'flies'], /harvested: found "flies"; expected FIELD=VALUE/],
  [['record', 'note', 'text=a', 'text=b'], /text: found the field twice/],
  [['record', 'note', 'text=a', 'id=1'], /id: found an unknown field/],
];

describe('a command line with anything wrong: exit status 2, and what would be right', () => {
  for (const [args, says] of badCommands) {
    it(`flylarder ${args.join(' ')}`, () => {
      const folder = emptyFolder();
      const outcome = flylarder(folder, args);
      expect(outcome).toMatchObject({ status: 2, out: '' });
      expect(outcome.err).toMatch(says);
      expect(existsSync(join(folder, 'household'))).toBe(false);
    });
  }
});
