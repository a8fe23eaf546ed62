import { expect, it } from 'vitest';
import type { Entry } from '../../../logbook/index.ts';
import { importName, importsOf } from './imports.ts';

const entry = (id: string, by: string, fields: object = { kind: 'temperature' }) =>
  ({ id, by, ...fields }) as unknown as Entry;

it('imports are named as the command line names its own, and stand until all of it is taken back', () => {
  const by = importName('room.csv', '2026-11-25T12:00:00Z');
  expect(by).toBe('import of room.csv 2026-11-25T12:00:00Z');
  const others = [entry('x', 'Ana'), entry('y', 'import of cups.csv 2026', { kind: 'harvested' })];
  const log = [...others, entry('a', by), entry('b', by, { kind: 'logger' }), entry('c', importName('b.csv', '2027'))];
  expect(importsOf(log).map((one) => [one.by, one.entries.length])).toEqual([
    ['import of b.csv 2027', 1],
    [by, 2],
  ]);
  expect(importsOf(log)[1]).toMatchObject({ file: 'room.csv', on: '2026-11-25' });
  const voided = ['a', 'b'].map((amends) => entry(`v${amends}`, 'Ana', { kind: 'amended', amends, void: true }));
  expect(importsOf([...log, ...voided]).map((one) => one.by)).toEqual(['import of b.csv 2027']);
});
