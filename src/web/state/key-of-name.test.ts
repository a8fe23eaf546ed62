import { expect, it } from 'vitest';
import { key } from '../../logbook/entries/field-checks.ts';
import { keyOfLabel } from './key-of-name.ts';

it('a label stays as it is where the logbook takes it, and becomes a key where not', () => {
  expect(keyOfLabel('M3')).toBe('M3');
  expect(keyOfLabel('2b.')).toBe('2b.');
  expect(keyOfLabel('Küche 2 / oben')).toBe('küche-2-oben');
  for (const label of ['M3', 'Küche 2', '- ?', 'x'.repeat(80)])
    expect(key.safeParse(keyOfLabel(label)).success).toBe(true);
});
