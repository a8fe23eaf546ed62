import { expect, it } from 'vitest';
import { sentence } from '../../foundation/index.ts';
import { fold } from '../../logbook/index.ts';
import { wordsOf } from '../words/words.ts';
import { changeTitle } from './change-title.ts';

it.each([
  [2, 'C', '2 °C warmer'],
  [2, 'F', '3.6 °F warmer'],
  [-1.5, 'F', '2.7 °F cooler'],
] as const)('%d C in °%s is titled %s', (byC, degrees, title) => {
  expect(sentence(changeTitle(fold([]), { change: 'warmer', byC }), wordsOf({ degrees }))).toBe(title);
});
