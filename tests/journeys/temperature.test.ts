import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { emptyFolder, flylarder } from './command-line.ts';

const two = (n: number) => String(n).padStart(2, '0');
const logger = [
  'Zeit;Innen (°C);Feuchte (%)',
  ...Array.from({ length: 72 }, (_, h) => {
    const celsius = (24 + 3 * Math.sin((h / 24) * 2 * Math.PI)).toFixed(1).replace('.', ',');
    return `${20 + Math.floor(h / 24)}.11.2026 ${two(h % 24)}:00;${celsius};45`;
  }),
  '22.11.2026 23:30;1000000000;45',
].join('\n');

function household(): string {
  const folder = emptyFolder();
  const lines = [
    '{"kind":"household","on":"2026-11-01","timeZone":"Europe/Berlin"}',
    '{"kind":"place","on":"2026-11-01","place":"shelf","temperatureC":22,"limitsC":{"low":10,"high":26}}',
    '{"kind":"place","on":"2026-11-01","place":"cellar","temperatureC":17}',
    '{"kind":"started","on":"2026-11-16","culture":"M1","strain":"melanogaster","place":"shelf","founders":50}',
  ];
  writeFileSync(join(folder, 'start.jsonl'), `${lines.join('\n')}\n`);
  expect(flylarder(folder, ['import', 'start.jsonl'])).toMatchObject({ status: 0, err: '' });
  writeFileSync(join(folder, 'log.csv'), logger);
  return folder;
}

describe('temperature on the command line', () => {
  it('shows a logger’s file, writes it on demand, and takes it back', () => {
    const folder = household();
    const shown = flylarder(folder, ['temperature', 'import', 'log.csv', '--place', 'shelf']);
    expect(shown).toMatchObject({ status: 0, err: '' });
    expect(shown.out).toMatch(/Innen \(°C\) +temperature/);
    expect(shown.out).toMatch(/1 line left out, the first log\.csv, line 74: found 1000000000 C/);
    const asked = ['temperature', 'import', 'log.csv', '--place', 'shelf', '--yes'];
    const written = flylarder(folder, asked);
    expect(written.out).toMatch(/Recorded 4 entries/);
    expect(flylarder(folder, asked).out).toMatch(/Recorded 0 entries/);

    const answer = flylarder(folder, ['temperature', '--on', '2026-11-22', '--json']);
    expect(answer.status).toBe(1);
    expect(JSON.parse(answer.out).places[0]).toMatchObject({ readings: 3, latest: { meanC: 24, minC: 21, maxC: 27 } });
    expect(flylarder(folder, ['today', '--on', '2026-11-22']).out).toMatch(/27 °C in the cups, above 26/);

    // The next file of this logger needs no word of how it is to be read, nor where it hung.
    writeFileSync(join(folder, 'next.csv'), logger.replaceAll('.11.2026', '.10.2026'));
    const next = flylarder(folder, ['temperature', 'import', 'next.csv', '--json']);
    expect(JSON.parse(next.out)).toMatchObject({ place: 'shelf', known: true, doubts: [], remember: null });

    const name = /--undo "([^"]+)"/.exec(written.out)?.[1] as string;
    expect(flylarder(folder, ['import', '--undo', name]).status).toBe(0);
    expect(JSON.parse(flylarder(folder, ['temperature', '--on', '2026-11-22', '--json']).out).places[0].readings).toBe(
      0,
    );
  });

  it('says what a warmer place or a carried cup would change', () => {
    const folder = household();
    const warmer = flylarder(folder, ['temperature', '--on', '2026-11-20', '--place', 'shelf', '--warmer', '2']);
    expect(warmer.out).toMatch(/M1.*->[\s\S]*thermostat/);
    const moved = flylarder(folder, ['temperature', '--on', '2026-11-20', '--move', 'M1', '--to', 'cellar', '--json']);
    const [cup] = JSON.parse(moved.out).cultures;
    expect(cup.firstAdultsLaterDays).toBeGreaterThan(1);
    expect(cup.nextLaterDays.p05).toBeLessThan(cup.nextLaterDays.p95);
    const words = flylarder(folder, ['temperature', '--on', '2026-11-20', '--move', 'M1', '--to', 'cellar']).out;
    expect(words).toMatch(/first flies \+[\d.]+ d \([+-][\d.]+ to \+[\d.]+\)/);
  });

  it('takes limits, and a cup read beside its shelf, from words', () => {
    const folder = household();
    const limits = ['record', 'place', 'place=cellar', 'limitsC.low=12', 'limitsC.high=20', 'on=2026-11-19'];
    expect(flylarder(folder, limits)).toMatchObject({ status: 0, err: '' });
    for (const cupC of [24.5, 25]) {
      const pair = ['record', 'temperature', 'place=shelf', `cupC=${cupC}`, 'shelfC=22', 'on=2026-11-19'];
      expect(flylarder(folder, pair).status).toBe(0);
    }
    const { places } = JSON.parse(flylarder(folder, ['temperature', '--on', '2026-11-20', '--json']).out);
    const [cellar, shelf] = ['cellar', 'shelf'].map((key) => places.find((p: { place: string }) => p.place === key));
    expect(cellar).toMatchObject({ limitsC: { low: 12, high: 20 }, limitsAreUsual: false });
    expect(shelf.cupOffset).toMatchObject({ keeperC: 0, pairs: 2 });
    expect(flylarder(folder, ['temperature', '--on', '2026-11-20']).out).toMatch(/against the shelf, give or take/);
  });

  it('refuses what is no table, no place, no cup, with where and what would be right', () => {
    const folder = household();
    writeFileSync(join(folder, 'diary.csv'), 'Dear diary,\nit was warm\n');
    writeFileSync(join(folder, 'words.csv'), 't;c\n2026-11-25 12:00;warm\n2026-11-25 13:00;cold\n');
    const refused: [string[], RegExp][] = [
      [['temperature', 'import', 'diary.csv', '--place', 'shelf'], /diary\.csv, line 2: found no time/],
      [['temperature', 'import', 'words.csv', '--place', 'shelf'], /words\.csv, line 3: found "cold" beside the time/],
      [['temperature', 'import', 'log.csv', '--place', 'attic'], /place: found "attic"; expected one of/],
      [['temperature', 'import', 'log.csv'], /place: found nothing/],
      [['temperature', 'import', 'gone.csv', '--place', 'shelf'], /gone\.csv: found no such file/],
      [['temperature', 'import', 'log.csv', '--place', 'shelf', '--zone', 'Mars/Base'], /Mars\/Base/],
      [['temperature', '--move', 'M9', '--to', 'cellar'], /culture: found "M9"/],
    ];
    for (const [args, text] of refused) {
      const { status, err } = flylarder(folder, args);
      expect([status, err], args.join(' ')).toEqual([2, expect.stringMatching(text)]);
    }
  });

  it('makes a sensor’s token once and keeps none', () => {
    const folder = household();
    const made = flylarder(folder, ['sensors', 'add', 'window', '--place', 'shelf', '--json']);
    expect(JSON.parse(made.out).token).toMatch(/^[0-9a-f]{16}\./);
    expect(flylarder(folder, ['sensors']).out).toMatch(/window +shelf/);
    expect(flylarder(folder, ['sensors', 'revoke', 'window']).status).toBe(0);
    expect(flylarder(folder, ['sensors']).out).toMatch(/No sensor/);
    expect(flylarder(folder, ['sensors', 'add', 'window', '--place', 'attic']).status).toBe(2);
  });
});
