/**
 * Clock changes against the IANA database as Debian compiles it, read by its own `zdump`: the second before
 * and the second of every change, 1990 to 2026.
 */
import { spawnSync } from 'node:child_process';
import { beforeAll, describe, expect, it } from 'vitest';
import { ZoneClock } from '../../src/climate/index.ts';
import { needsDebian } from './debian-program.ts';

const zones = [
  'Europe/Berlin',
  'America/New_York',
  'Australia/Lord_Howe',
  'America/St_Johns',
  'Asia/Kathmandu',
  'Africa/Casablanca',
  'Pacific/Apia',
];

interface Moment {
  instantMs: number;
  offsetMs: number;
}

/** Lines such as `Europe/Berlin  Sun Mar 29 00:59:59 2020 UT = Sun Mar 29 01:59:59 2020 CET isdst=0 gmtoff=3600`. */
function momentsOf(zone: string): Moment[] {
  const { stdout } = spawnSync('zdump', ['-v', '-c', '1990,2027', zone], { encoding: 'utf8', env: { LC_ALL: 'C' } });
  return [...stdout.matchAll(/ (\w{3} +\d+ [\d:]+ \d{4}) UTC? = .* gmtoff=(-?\d+)/g)]
    .map(([, utc, seconds]) => ({ instantMs: Date.parse(`${utc} UTC`), offsetMs: 1000 * Number(seconds) }))
    .filter(({ instantMs }) => instantMs > Date.UTC(1990) && instantMs < Date.UTC(2027));
}

beforeAll(() => {
  needsDebian('libc-bin', ['zdump', '--version']);
  needsDebian('tzdata', ['test', '-e', '/usr/share/zoneinfo/Europe/Berlin']);
});

describe('clock changes', () => {
  it.each(zones)('%s', (zone) => {
    const moments = momentsOf(zone);
    const clock = ZoneClock.of(zone);
    if (!clock.ok) throw new Error(zone);
    const wrong = moments.filter(({ instantMs, offsetMs }) => clock.value.offsetMs(instantMs) !== offsetMs);
    // Kathmandu has had none since 1986; all others have some.
    expect(moments.length).toBeGreaterThanOrEqual(zone === 'Asia/Kathmandu' ? 0 : 4);
    expect(wrong.map(({ instantMs }) => new Date(instantMs).toISOString())).toEqual([]);
  });
});
