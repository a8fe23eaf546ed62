import * as fc from 'fast-check';
import { validate, version } from 'uuid';
import { expect, it } from 'vitest';
import { entryIdMaker } from './entry-id.ts';

it('ids of one device are UUIDs of version 7 that only rise, whatever its clock does', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 0, max: 2 ** 47 }), { minLength: 1 }),
      fc.uint8Array({ minLength: 10, maxLength: 10 }),
      (clock, bytes) => {
        let i = 0;
        const next = entryIdMaker({ now: () => clock[i++ % clock.length] as number, randomBytes: () => bytes });
        const ids = Array.from({ length: 6 * clock.length }, next);
        expect(ids.every((id) => validate(id) && version(id) === 7)).toBe(true);
        expect(ids).toEqual([...new Set(ids)].sort());
      },
    ),
  );
});

it('more ids than a millisecond has room for still rise', () => {
  const next = entryIdMaker({ now: () => 1_767_225_600_000, randomBytes: (n) => new Uint8Array(n).fill(255) });
  const ids = Array.from({ length: 10_000 }, next);
  expect(ids).toEqual([...new Set(ids)].sort());
});

it('the time stands first, as RFC 9562 has it in its example (A.6)', () => {
  const bytes = new Uint8Array([0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f]);
  const id = entryIdMaker({ now: () => 0x017f22e279b0, randomBytes: () => bytes })();
  expect(id).toBe('017f22e2-79b0-74c3-98c4-dc0c0c07398f');
});
