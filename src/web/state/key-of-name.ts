/** A key for a name that the keeper gave, as the logbook wants keys. */

/** `Hall cupboard` is `hall-cupboard`, with a number behind it where that is taken. */
export function keyOfName(name: string, taken: readonly string[]): string {
  const plain = name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 40);
  const key = plain === '' ? 'new' : plain;
  if (!taken.includes(key)) return key;
  let number = 2;
  while (taken.includes(`${key}-${number}`)) number += 1;
  return `${key}-${number}`;
}

/** What the logbook takes for a key as it stands. */
const isKey = /^[\p{L}\p{N}][\p{L}\p{N}._-]{0,63}$/u;

/** A cup's label is its key wherever it can be, so that what stands on the cup is what the logbook says. */
export function keyOfLabel(label: string): string {
  return isKey.test(label) ? label : keyOfName(label, []);
}
