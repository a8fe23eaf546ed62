import { expect, it } from 'vitest';
import type { Day } from '../../foundation/index.ts';
import { cupsOn } from './cups-on.ts';

const day = (text: string) => text as Day;
const cup = (name: string, on: string, ended: string | null) => ({
  name,
  on: day(on),
  ended: ended === null ? null : { on: day(ended), reason: 'spent' as const },
});
const cups = [
  cup('over', '2026-10-01', '2026-11-05'),
  cup('standing', '2026-10-20', null),
  cup('young', '2026-11-20', null),
  cup('ended today', '2026-10-20', '2026-11-25'),
];
const namesOn = (on: string) => cupsOn(cups, day(on), day('2026-11-25')).map(({ name }) => name);

it('today has the living cups', () => {
  expect(namesOn('2026-11-25')).toEqual(['standing', 'young']);
});

it('an earlier day has the cups that stood then, those that have ended since among them', () => {
  expect(namesOn('2026-11-05')).toEqual(['over', 'standing', 'ended today']);
  expect(namesOn('2026-11-06')).toEqual(['standing', 'ended today']);
  expect(namesOn('2026-10-19')).toEqual(['over']);
});
