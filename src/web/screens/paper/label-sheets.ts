/** The sheets of labels that the page offers; named by paper, size and number, as the paper room knows them. */
export const labelSheetNames = [
  'a4-70x37-24',
  'a4-63.5x38.1-21',
  'a4-48.5x25.4-40',
  'a4-38.1x21.2-65',
  'a4-25x25-77',
  'letter-66.7x25.4-30',
  'letter-101.6x50.8-10',
] as const;

/** @example sheetWords('a4-70x37-24') // => { paper: 'A4', size: '70 × 37', count: '24' } */
export function sheetWords(name: string): { paper: string; size: string; count: string } {
  const [paper = '', size = '', count = ''] = name.split('-');
  return { paper: paper === 'a4' ? 'A4' : 'Letter', size: size.replace('x', ' × '), count };
}
