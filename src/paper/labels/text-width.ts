/**
 * How wide a text is, in units of its type size. The page cannot be asked here, so widths are those of the
 * widest face that the labels may fall back to (DejaVu Sans Bold, read off its metrics), on the safe side.
 */

const widthOfGroup: [RegExp, number][] = [
  [/[ijl.,:;'!|()[\]/ -]/, 0.46],
  [/[frtI]/, 0.5],
  [/[mwMW@%–]/, 1.11],
  [/[A-ZÄÖÜ&]/, 0.85],
];
const otherWidth = 0.72;

/** Width of `text` over its type size; at least that of one character. */
export function textWidth(text: string): number {
  return Math.max(
    otherWidth,
    [...text].reduce((sum, c) => sum + charWidth(c), 0),
  );
}

function charWidth(c: string): number {
  return widthOfGroup.find(([group]) => group.test(c))?.[1] ?? otherWidth;
}
