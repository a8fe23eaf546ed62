/** What a column of a keeper's own spreadsheet can mean, and the words that give it away. */

export const sheetFields = {
  culture: 'the cup',
  strain: 'the strain',
  startedOn: 'the day it was started',
  founders: 'how many founders',
  fromCultures: 'the cups that gave the founders',
  place: 'the place',
  firstAdultsOn: 'the day the first flies were seen',
  on: 'the day of the line',
  flies: 'flies taken out',
  endedOn: 'the day it was thrown out',
  reason: 'why it was thrown out',
  temperatureC: 'the temperature, in C',
  note: 'a note',
} as const;

export type SheetField = keyof typeof sheetFields;

/** English and German words, most telling first within a field; the fields most easily mistaken last. */
const words: [field: SheetField, pattern: RegExp][] = [
  ['temperatureC', /temp|°c/],
  ['founders', /founder|parents|adults? (added|(put )?in)|zuchttiere|ansatztiere/],
  [
    'fromCultures',
    /^(taken |made |started |set up )?(from|out of)\b|mother|parent (cup|culture|jar)|mutter|^(aus|von)\b/,
  ],
  ['firstAdultsOn', /first (fl|adult|emerg)|emerg|hatch|eclos|schlupf|erste flieg/],
  ['endedOn', /end|discard|thrown|tossed|disposed|entsorgt|ende/],
  ['startedOn', /start|set ?up|made|created|seeded|angesetzt|ansatz/],
  ['reason', /reason|why|grund|cause/],
  ['note', /note|comment|remark|notiz|bemerk|kommentar/],
  ['flies', /harvest|flies|count|taken|anzahl|ernte|fliegen/],
  ['place', /place|room|shelf|location|^where$|standort|raum|regal|^wo$/],
  ['strain', /strain|species|type|kind|line|stamm|^sorte?$|art/],
  ['culture', /cup|culture|container|jar|label|id|no\.?|number|name|becher|zucht|nummer/],
  ['on', /date|day|datum|tag/],
];

/** The meaning that each heading suggests, each meaning at most once; null where none does. */
export function proposedFields(headings: readonly string[]): (SheetField | null)[] {
  const taken = new Set<SheetField>();
  return headings.map((heading) => {
    const text = heading.trim().toLowerCase();
    const found = words.find(([field, pattern]) => !taken.has(field) && pattern.test(text));
    if (!found) return null;
    taken.add(found[0]);
    return found[0];
  });
}
