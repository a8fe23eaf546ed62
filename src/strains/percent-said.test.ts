import { expect, it } from 'vitest';
import { sentence } from '../foundation/index.ts';
import { percentSaid } from './percent-said.ts';

const english = { locale: 'en-GB', of: (text: string) => text, day: (day: string) => day, degrees: 'C' as const };

it.each([
  [0, '0 %'],
  [0.001, '< 1 %'],
  [0.444, '44 %'],
  [0.9951, '99.51 %'],
  [0.99999, '> 99.99 %'],
  [1, '100 %'],
])('%d is told as %s', (share, text) => expect(sentence(percentSaid(share), english)).toBe(text));
