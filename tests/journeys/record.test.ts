import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { emptyFolder, flylarder } from './command-line.ts';

/** A short horizon where one can be asked for: the digits are what matters here. */
const weeks = (name: string) => (name === 'today' ? [] : ['--weeks', '6']);

describe('recording and taking away', () => {
  it('a household from its first entries, one command each', () => {
    const folder = emptyFolder();
    const record = (...words: string[]) => flylarder(folder, ['record', ...words, '--on', '2026-10-01']);
    expect(record('household', 'name=Test shelf', 'workWeekdays=mon,thu', 'purchase.leadDays=3')).toMatchObject({
      status: 0,
      err: '',
    });
    expect(record('place', 'place=shelf', 'temperatureC=23').status).toBe(0);
    expect(record('started', 'culture=M1', 'strain=melanogaster', 'place=shelf', 'founders=50').status).toBe(0);
    const seen = record('seen', 'culture=M1', 'present=larvae,pupae', 'mould=no');
    expect(seen).toMatchObject({ status: 0, err: '' });
    expect(seen.out).toMatch(/2026-10-01.*M1/);
    const lines = flylarder(folder, ['export']).out.trim().split('\n');
    expect(lines.map((line) => JSON.parse(line).kind)).toEqual(['household', 'place', 'started', 'seen']);
    expect(JSON.parse(lines[0] as string)).toMatchObject({ workWeekdays: ['mon', 'thu'], purchase: { leadDays: 3 } });
    expect(JSON.parse(lines[3] as string)).toMatchObject({ present: ['larvae', 'pupae'], mould: false });
  });

  it('a slip is found in the logbook by its cup, and struck out by its id', () => {
    const folder = emptyFolder();
    const record = (...words: string[]) => flylarder(folder, ['record', ...words, '--on', '2026-10-01']);
    record('started', 'culture=M1', 'label=Shelf 1', 'strain=melanogaster', 'founders=50');
    record('note', 'text=dusted');
    record('harvested', 'culture=M1', 'flies=900');
    expect(flylarder(folder, ['logbook']).out).toContain('dusted');
    const before = flylarder(folder, ['logbook', 'Shelf 1']);
    expect(before).toMatchObject({ status: 0, err: '' });
    expect(before.out).not.toContain('dusted');
    const id = /harvested: 900 flies\.\n +(\S+)/.exec(before.out)?.[1] as string;
    expect(record('amended', `amends=${id}`, 'void=true')).toMatchObject({ status: 0, err: '' });
    const after = flylarder(folder, ['logbook', 'M1']).out;
    expect(after).toContain('2026-10-01  (amended) Shelf 1 harvested: 900 flies.');
    expect(after).toContain('An entry taken back.');
    expect(flylarder(folder, ['logbook', 'M9'])).toMatchObject({ status: 2, out: '' });
  });

  it('export, an empty folder, record: the same logbook byte for byte, and the same answers to the last digit', () => {
    const folder = emptyFolder();
    expect(flylarder(folder, ['demo', '--data', 'a', '--on', '2026-11-20']).status).toBe(0);
    const exported = flylarder(folder, ['export', '--data', 'a']).out;
    expect(exported.split('\n').length).toBeGreaterThan(200);
    writeFileSync(join(folder, 'log.jsonl'), exported);
    expect(flylarder(folder, ['record', 'log.jsonl', '--data', 'b']).status).toBe(0);
    expect(flylarder(folder, ['export', '--data', 'b']).out).toBe(exported);
    for (const name of ['today', 'forecast', 'plan']) {
      const asked = [name, '--on', '2026-11-20', '--seed', '5', '--scenarios', '100', ...weeks(name), '--json'];
      const first = flylarder(folder, [...asked, '--data', 'a']);
      expect([0, 1]).toContain(first.status);
      expect(JSON.parse(first.out)).toMatchObject({ on: '2026-11-20', seed: 5 });
      expect(flylarder(folder, [...asked, '--data', 'b'])).toEqual(first);
      expect(flylarder(folder, [...asked, '--logbook', 'log.jsonl'])).toEqual(first);
    }
  }, 300_000);

  it('a file recorded twice is written once', () => {
    const folder = emptyFolder();
    flylarder(folder, ['record', 'note', 'text=hello', '--data', 'a']);
    const exported = flylarder(folder, ['export', '--data', 'a']).out;
    const again = flylarder(folder, ['record', '-', '--data', 'a', '--json'], exported);
    expect(JSON.parse(again.out)).toMatchObject({ added: 0, alreadyThere: 1 });
    expect(flylarder(folder, ['export', '--data', 'a']).out).toBe(exported);
  });

  it('reading makes no household where there is none', () => {
    const folder = emptyFolder();
    for (const name of ['today', 'forecast', 'plan', 'export']) {
      const outcome = flylarder(folder, [name]);
      expect(outcome, name).toMatchObject({ status: 2, out: '' });
      expect(outcome.err, name).toMatch(/household: found no logbook; expected/);
    }
    expect(existsSync(join(folder, 'household'))).toBe(false);
  });
});
