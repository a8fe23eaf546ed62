/** The screens that have no place under the thumb, by what a keeper is after. */
export const waysInGroups = [
  { group: 'ahead', screens: ['plan', 'animals'] },
  { group: 'cups', screens: ['temperature', 'lifecycle', 'strains'] },
  { group: 'bench', screens: ['kitchen', 'paper'] },
  { group: 'written', screens: ['logbook', 'learned'] },
  { group: 'house', screens: ['settings'] },
] as const;
