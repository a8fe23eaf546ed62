import { describe, expect, it } from 'vitest';
import { contactsOf, type TracedCup } from './contacts.ts';

describe('contacts of a cup with mites', () => {
  const cup = (name: string, more: Partial<TracedCup> = {}): TracedCup => ({
    cup: name,
    parents: [],
    startedOn: 100,
    endedOn: null,
    places: [{ from: more.startedOn ?? 100, place: 'shelf' }],
    batch: null,
    ...more,
  });
  const sick = cup('sick', { parents: ['mother'], startedOn: 100, batch: 'm1' });
  const kindsOf = (others: TracedCup[]) =>
    Object.fromEntries(contactsOf([sick, ...others], 'sick', 125).map(({ cup: name, kinds }) => [name, kinds]));
  it('finds parents, offspring, the session, the shelf and the batch', () => {
    const away = [{ from: 80, place: 'attic' }];
    const kinds = kindsOf([
      cup('mother', { startedOn: 80, places: away }),
      cup('child', { parents: ['sick'], startedOn: 120, places: [{ from: 120, place: 'attic' }] }),
      cup('sibling', { places: away }),
      cup('neighbour', { startedOn: 90 }),
      cup('batchmate', { startedOn: 101, places: away, batch: 'm1' }),
      cup('stranger', { startedOn: 101, places: away }),
      cup('long gone', { startedOn: 10, endedOn: 60 }),
      cup('later', { startedOn: 126, batch: 'm1' }),
    ]);
    expect(kinds).toEqual({
      mother: ['parent'],
      child: ['offspring'],
      sibling: ['same session'],
      neighbour: ['same place'],
      batchmate: ['same batch'],
    });
  });
  it('minds when they stood together', () => {
    const moved = cup('moved', {
      startedOn: 90,
      places: [
        { from: 90, place: 'shelf' },
        { from: 100, place: 'attic' },
      ],
    });
    expect(kindsOf([moved])).toEqual({});
    const [contact] = contactsOf(
      [
        sick,
        {
          ...moved,
          places: [
            { from: 90, place: 'attic' },
            { from: 110, place: 'shelf' },
          ],
        },
      ],
      'sick',
      125,
    );
    expect(contact?.sinceDay).toBe(110);
  });
  it('wants a cup that exists', () => expect(() => contactsOf([sick], 'x', 125)).toThrow(/x is not/));
});
