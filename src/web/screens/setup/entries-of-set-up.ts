/** The five answers as entries. */
import type { Day } from '../../../foundation/index.ts';
import type { EntryDraft } from '../../../logbook/index.ts';
import { plusDays } from '../../days/calendar.ts';
import type { SetUpDraft } from './set-up-draft.svelte.ts';
import { usualCups } from './usual-rations.ts';

const place = 'home';

/** @param names what the household, its place and its cup are called, in the keeper's language. */
export function entriesOfSetUp(
  draft: SetUpDraft,
  on: Day,
  names: { household: string; place: string; container: string },
): EntryDraft[] {
  const { temperatureC, seasons, seasonsC, workWeekdays } = draft;
  const cup = usualCups.find((each) => each.container === draft.container) ?? usualCups[3];
  return [
    { kind: 'household', on, name: names.household, workWeekdays, serviceLevel: Number(draft.serviceLevel) },
    { kind: 'place', on, place, name: names.place, ...(seasons ? { seasonsC } : { temperatureC }) },
    ...(cup ? [{ kind: 'container', on, name: names.container, ...cup } as EntryDraft] : []),
    ...groupsOf(draft, on),
    ...cupsOf(draft, on),
  ];
}

function groupsOf(draft: SetUpDraft, on: Day): EntryDraft[] {
  const taken = new Set<string>();
  return draft.groups.map((each) => {
    const from = plusDays(on, each.inDays);
    return {
      kind: 'group',
      on,
      group: freshKey(each.name, taken),
      name: each.name,
      ...(each.animal && { animal: each.animal }),
      count: each.count,
      fliesPerFeeding: each.flies,
      strain: each.strain,
      feedingWeekdays: each.feedingWeekdays,
      canWaitDays: each.canWaitDays,
      ...(each.inDays > 0 && { from }),
    };
  });
}

/** Letters, digits and dashes of the name, with a number where it is taken. */
function freshKey(name: string, taken: Set<string>): string {
  const plain =
    name
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, '-')
      .replace(/^-+|-+$/g, '')
      .slice(0, 40) || 'group';
  let key = plain;
  for (let i = 2; taken.has(key); i++) key = `${plain}-${i}`;
  taken.add(key);
  return key;
}

function cupsOf(draft: SetUpDraft, on: Day): EntryDraft[] {
  const numbers = new Map<string, number>();
  return draft.cups.flatMap((row) =>
    Array.from({ length: row.count }, () => {
      const letter = row.strain === 'hydei' ? 'H' : 'M';
      const number = (numbers.get(letter) ?? 0) + 1;
      numbers.set(letter, number);
      return cupOf(row, `${letter}${number}`, on, draft.container);
    }),
  );
}

function cupOf(row: SetUpDraft['cups'][number], culture: string, on: Day, container: string): EntryDraft {
  const same = { culture, label: culture, strain: row.strain, place, container };
  if (row.bought) return { kind: 'bought', on, ...same, ageDays: row.ageDays };
  const founders = usualCups.find((each) => each.container === container)?.founders ?? 50;
  return { kind: 'started', on: plusDays(on, -row.ageDays), ...same, founders };
}
