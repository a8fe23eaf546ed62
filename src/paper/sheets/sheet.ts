/** A printed sheet as plain data: what it says and in which order, before any printer or page. */

export type Block =
  | { kind: 'heading'; text: string }
  | { kind: 'text'; text: string }
  | { kind: 'list'; items: readonly string[] }
  /** Steps with an empty box to tick; `aside` stands before the text, e.g. a time. */
  | { kind: 'ticks'; items: readonly { text: string; aside?: string }[] }
  | { kind: 'table'; head: readonly string[]; rows: readonly (readonly Cell[])[]; isGrid?: boolean }
  /** Pictures (SVG text of this room) side by side, each with its sentence. */
  | { kind: 'pictures'; pictures: readonly { svg: string; text: string }[] }
  | { kind: 'warnings'; title: string; items: readonly string[] }
  | { kind: 'qr'; link: string; text: string }
  /** Several codes side by side, each with what it holds beneath. */
  | { kind: 'codes'; text: string; codes: readonly { content: string; caption: string }[] };

/** Lines under each other; a line may begin with a box to tick. */
export type Cell = readonly { text: string; hasBox?: boolean; isStrong?: boolean }[];

export interface Sheet {
  language: string;
  title: string;
  subtitle: string;
  orientation: 'portrait' | 'landscape';
  blocks: readonly Block[];
}

export function cell(...lines: string[]): Cell {
  return lines.map((text) => ({ text }));
}
