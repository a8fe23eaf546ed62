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
