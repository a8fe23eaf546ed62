/** Entries for the conformance suite, tests and benchmarks: made by number, the same every time. */
import { day, addDays } from '../foundation/index.ts';
import type { Entry } from '../logbook/index.ts';

const cultures = 997;

/** The id of the `n`th entry of a numbered device. */
export function numberedId(n: number, device = 0): string {
  const clock = (1_767_225_600_000 + n * 60_000).toString(16).padStart(12, '0');
  return `${clock.slice(0, 8)}-${clock.slice(8)}-7000-8000-${device.toString(16).padStart(12, '0')}`;
}

/** The `n`th harvest of a numbered device, about 250 bytes of text. */
export function numberedEntry(n: number, device = 0): Entry {
  const minute = new Array(2)
    .fill(0)
    .map((_, i) => String(Math.floor(n / 60 ** (1 - i)) % (i === 0 ? 24 : 60)).padStart(2, '0'));
  const on = addDays(day('2026-01-01'), Math.floor(n / 1440));
  return {
    id: numberedId(n, device),
    kind: 'harvested',
    on,
    recordedAt: `${on}T${minute.join(':')}:00.000Z`,
    by: `device ${device}`,
    culture: `M${n % cultures}`,
    flies: n % 400,
    purpose: 'feeding',
  };
}

export function numberedEntries(from: number, until: number, device = 0): Entry[] {
  return Array.from({ length: until - from }, (_, i) => numberedEntry(from + i, device));
}

/** The starts of all cultures that the numbered entries harvest. */
export function numberedStarts(): Entry[] {
  return Array.from({ length: cultures }, (_, n) => {
    const { id, on, recordedAt, by } = { ...numberedEntry(0), id: numberedId(n, 0xffff) };
    return { id, kind: 'started', on, recordedAt, by, culture: `M${n}`, strain: 'melanogaster', founders: 50 };
  });
}
