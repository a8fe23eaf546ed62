/** The invented household of the demo: who lives there, where the cups stand, what is wanted. */
import { addDays, type Day, said, told, type Weekday } from '../../foundation/index.ts';
import type { EntryDraft } from '../../logbook/index.ts';
import type { Language } from '../../paper/index.ts';
import { wordsOf } from '../words/words.ts';

export const demoKeys = {
  pantry: 'pantry',
  landing: 'landing',
  stub: 'stubwing',
  hydei: 'hydei',
} as const;

/** Animals of each strain's eaters now, and flies for each of them a day. */
export const demoMouths = {
  froglets: { count: 12, fliesPerFeeding: 16 },
  geckos: { count: 7, fliesPerFeeding: 7 },
} as const;

export const demoWorkWeekdays: Weekday[] = ['mon', 'thu'];

/**
 * Entries written on the evening the logbook began, `began`; the animals had eaten from the cups since
 * `eatingSince`, and `on` is the demo's today. Things are called as in `language`.
 */
export function demoSettings(began: Day, eatingSince: Day, on: Day, language?: Language): EntryDraft[] {
  const entries = [household, ...places, ...strainsAndCup, ...groups(eatingSince), hatch(on)];
  const words = wordsOf({ ...(language && { language }) });
  const settings = entries.map((entry) => ({ ...told<object>(entry, words), on: began }) as EntryDraft);
  return [
    ...settings,
    ...stock.map((fields) => ({ kind: 'stock', on: addDays(on, -daysSinceCount), ...fields }) as EntryDraft),
  ];
}

/** The kitchen was counted some days ago; prices as in any shop, the vinegar's was not written down. */
const daysSinceCount = 4;
const stock = [
  { item: 'potato-flakes', amount: 900, unit: 'g', pricePerUnit: 0.0048 },
  { item: 'powdered-sugar', amount: 700, unit: 'g', pricePerUnit: 0.0026 },
  { item: 'brewers-yeast', amount: 55, unit: 'g', pricePerUnit: 0.03 },
  { item: 'vinegar', amount: 1, unit: 'l' },
  { item: 'cup', amount: 7, unit: 'piece', pricePerUnit: 0.35 },
  { item: 'cup-dirty', amount: 3, unit: 'piece' },
  { item: 'lid', amount: 14, unit: 'piece', pricePerUnit: 0.12 },
  { item: 'climbing-material', amount: 20, unit: 'piece', pricePerUnit: 0.04 },
];

const household = {
  kind: 'household',
  name: said`Fernhouse`,
  workWeekdays: demoWorkWeekdays,
  serviceLevel: 0.99,
  maxCupsPerSession: 6,
  shelfCups: 30,
  purchase: { leadDays: 3, deliveryWeekdays: ['wed', 'thu', 'sat'], quarantineDays: 14, pricePerCup: 7.5 },
  weights: { perCup: 1.4, perSession: 2, perBoughtCup: 7.5 },
  currency: 'EUR',
  hemisphere: 'north',
  timeZone: 'Europe/Copenhagen',
  dusting: [
    { supplement: said`calcium`, timesPerWeek: 6 },
    { supplement: said`vitamins`, timesPerWeek: 1 },
  ],
};

const places = [
  {
    kind: 'place',
    place: demoKeys.pantry,
    name: said`Pantry shelf`,
    seasonsC: { winter: 22, spring: 22.5, summer: 24.5, autumn: 22.5 },
    cupOffsetC: 0.5,
  },
  { kind: 'place', place: demoKeys.landing, name: said`Landing cupboard`, temperatureC: 21 },
];

const strainsAndCup = [
  { kind: 'strain', strain: demoKeys.stub, name: said`Stub-winged melanogaster`, base: 'melanogaster' },
  { kind: 'strain', strain: demoKeys.hydei, name: said`Flightless hydei`, base: 'hydei' },
  {
    kind: 'container',
    container: 'tall',
    name: said`Tall cup`,
    volumeMl: 900,
    mediumMassG: 150,
    surfaceCm2: 82,
    founders: 50,
  },
];

function groups(from: Day) {
  return [
    {
      kind: 'group',
      group: 'froglets',
      name: said`Dart-frog juveniles`,
      animal: 'dart-frog-juvenile',
      ...demoMouths.froglets,
      strain: demoKeys.stub,
      canWaitDays: 1,
      from,
    },
    {
      kind: 'group',
      group: 'geckos',
      name: said`Gecko hatchlings`,
      animal: 'gecko-hatchling',
      ...demoMouths.geckos,
      strain: demoKeys.hydei,
      canWaitDays: 1,
      from,
    },
  ];
}

/** New mouths in about six weeks: how many and on which day, nobody knows yet. */
function hatch(on: Day) {
  return {
    kind: 'group',
    group: 'nymphs',
    name: said`Mantis nymphs, hatch expected`,
    animal: 'mantis-l1',
    count: 50,
    fliesPerFeeding: 3,
    strain: demoKeys.stub,
    feedingWeekdays: ['mon', 'wed', 'fri', 'sun'],
    canWaitDays: 2,
    from: addDays(on, 42),
    until: addDays(on, 77),
    arrival: { earliest: addDays(on, 38), latest: addDays(on, 46), countLow: 30, countHigh: 70 },
  };
}
