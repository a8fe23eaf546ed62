/** What holds until the keeper says otherwise. All are common practice, without a source, and editable. */
import { weekdays } from '../../foundation/index.ts';
import type { ContainerFacts, HouseholdFacts, PlaceFacts, StrainFacts } from './facts.ts';

export function householdDefaults(): HouseholdFacts {
  return {
    name: 'Household',
    workWeekdays: ['wed', 'sun'],
    serviceLevel: 0.99,
    maxCupsPerSession: 12,
    shelfCups: 60,
    purchase: { leadDays: 3, deliveryWeekdays: ['tue', 'wed', 'thu', 'fri'], quarantineDays: 14, pricePerCup: null },
    weights: { perCup: 1, perSession: 0.5, perBoughtCup: 4 },
    currency: 'EUR',
    hemisphere: 'north',
    timeZone: 'UTC',
    dusting: [],
    presumeFeeding: true,
  };
}

export const containerDefaults: Omit<ContainerFacts, 'container' | 'name'> = {
  volumeMl: 946,
  mediumMassG: 150,
  surfaceCm2: 85,
  founders: 50,
};

/** The place of a household that names none. */
export function homePlace(): PlaceFacts {
  return { place: 'home', name: 'Home', expected: { allYearC: 22 }, cupOffsetC: 0, readings: [] };
}

/** A strain is as published, and nobody knows its mutation, until an entry says otherwise. */
export const strainDefaults = { paceFactor: 1, yieldFactor: 1, massFactor: 1, mutation: 'unknown' };

/** Strains that may be named without an entry of their own. */
const publishedStrains: Record<string, string> = {
  melanogaster: 'Drosophila melanogaster',
  hydei: 'Drosophila hydei',
};

export function publishedStrain(strain: string): StrainFacts | null {
  const name = Object.hasOwn(publishedStrains, strain) ? publishedStrains[strain] : undefined;
  return name === undefined ? null : { strain, name, base: strain, ...strainDefaults };
}

export const everyDay = [...weekdays];
export const canWaitDaysDefault = 1;
