import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { dayCount, dayText } from './proleptic-gregorian.ts';

describe('the Gregorian calendar', () => {
  it('is that of Temporal on every day from 1899 to 2301', () => {
    const epoch = Temporal.PlainDate.from('1970-01-01');
    const last = Temporal.PlainDate.from('2301-01-01');
    let count = epoch.until(Temporal.PlainDate.from('1899-01-01'), { largestUnit: 'days' }).days;
    const wrong: string[] = [];
    for (let day = epoch.add({ days: count }); Temporal.PlainDate.compare(day, last) < 0; day = day.add({ days: 1 })) {
      const text = day.toString();
      if (dayText(count) !== text || dayCount(text) !== count) wrong.push(text);
      count += 1;
    }
    expect(wrong).toEqual([]);
    expect(count).toBe(epoch.until(last, { largestUnit: 'days' }).days);
  });

  it('does not give days that do not exist back as they were', () => {
    for (const text of ['2026-02-29', '2100-02-29', '2026-04-31', '2026-13-01', '2026-00-10', '2026-01-00']) {
      expect(dayText(dayCount(text)), text).not.toBe(text);
    }
  });
});
