import { describe, expect, it } from 'vitest';
import { sentence, type Words } from '../foundation/index.ts';
import { differenceOf } from './trial.ts';
import { comparison } from './trial-lesson.ts';

const english: Words = { locale: 'en-GB', of: (text) => text, day: String, degrees: 'C' };
const compared = (first: number[], second: number[]) => {
  const lesson = comparison('recipe', { first: 'oats', second: 'potato', cups: 8 }, differenceOf(first, second), 0.3);
  return { ...lesson, text: sentence(lesson.text, english) };
};

describe('the sentence of a comparison', () => {
  it('names the better one first and says how sure that is, whichever was given first', () => {
    const behind = compared([0, 0, 0, 0, 0.5], [0.2, 0.2, 0.2, 0.2, 0.2]);
    expect(behind.text).toMatch(/^potato gives \d+ % more flies than oats \(80 % sure, 8 cups\);/);
    expect(behind.value).toBeLessThan(1);
    expect(compared([0.2, 0.2, 0.2, 0.2, 0.2], [0, 0, 0, 0, 0.5]).text).toMatch(
      /^oats gives .* \(80 % sure, 8 cups\);/,
    );
  });

  it('claims no certainty, and no sureness of being alike', () => {
    expect(compared([0.2, 0.3], [0, 0]).text).toContain('(over 99 % sure, 8 cups)');
    expect(compared([0.1, -0.1], [0, 0]).text).toMatch(/^oats and potato give alike \(8 cups\);/);
  });
});
