import { expect, it } from 'vitest';
import { day, dayNumber, sentence } from '../../foundation/index.ts';
import { wordsOf } from '../words/words.ts';
import { reasonSaid } from './reason-said.ts';

it('one cup is spoken of as one', () => {
  const told = (cups: number, language: 'en' | 'de' = 'en') => {
    const values = { strain: 'Hydei', cups, shortDay: 4, untilDay: 9 };
    return sentence(reasonSaid({ code: 'cover-need', values }, dayNumber(day('2026-11-25'))), wordsOf({ language }));
  };
  expect(told(1)).toMatch(/^Without it Hydei .*; it covers the need until /);
  expect(told(2)).toMatch(/^Without them Hydei .*; 2 cover the need until /);
  expect(told(1, 'de')).toMatch(/^Ohne ihn w.re Hydei .*; er deckt den Bedarf /);
  const both = { strain: 'Hydei', cups: 1, shortDay: 4, foundersDay: 16 };
  const covers = reasonSaid({ code: 'cover-need-and-founders', values: both }, dayNumber(day('2026-11-25')));
  expect(sentence(covers, wordsOf())).toMatch(/^It covers the need of Hydei from .* and keeps cups /);
  const founders = { strain: 'Hydei', founderCups: 1, foundersDay: 16 };
  const kept = reasonSaid({ code: 'keep-founders', values: founders }, dayNumber(day('2026-11-25')));
  expect(sentence(kept, wordsOf())).toMatch(/ no cup of Hydei would be at its best/);
});
