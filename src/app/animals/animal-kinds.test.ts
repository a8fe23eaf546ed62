import { expect, it } from 'vitest';
import { kindOf, nearKinds } from './animal-kinds.ts';

it.each([
  ['mantid', /^mantis-l1/],
  ['jumping-spider-i22', /^jumping-spider/],
  ['killfish', /^killifish$/],
])('%s is near to kinds of the books', (animal, near) => {
  expect(kindOf(animal)).toBeNull();
  expect(nearKinds(animal)[0]).toMatch(near);
});

it('an animal of another sort is near to none', () => expect(nearKinds('aardvark')).toEqual([]));
