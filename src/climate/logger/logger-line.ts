/** One line of a logger's file cut into cells: any delimiter, cells in quotation marks or not. */

export const delimiters = ['\t', ';', '|', ',', ' '] as const;
export type Delimiter = (typeof delimiters)[number];

/** All cells, without their quotation marks and outer spaces. Runs of spaces are one delimiter. */
export function cellsOf(line: string, delimiter: Delimiter): string[] {
  if (delimiter === ' ') return line.trim().split(/ +/).map(unquoted);
  if (!line.includes('"')) return line.split(delimiter).map((cell) => cell.trim());
  return quotedCells(line, delimiter);
}

/** The one cell `column` (0 is the first), or null when the line is shorter: quicker than all of them. */
export function cellAt(line: string, delimiter: Delimiter, column: number): string | null {
  if (delimiter === ' ' || line.includes('"')) return cellsOf(line, delimiter)[column] ?? null;
  let from = 0;
  for (let i = 0; i < column; i += 1) {
    from = line.indexOf(delimiter, from) + 1;
    if (from === 0) return null;
  }
  const until = line.indexOf(delimiter, from);
  return line.slice(from, until < 0 ? line.length : until).trim();
}

function quotedCells(line: string, delimiter: string): string[] {
  const cells: string[] = [];
  let cell = '';
  let quoted = false;
  for (const char of line) {
    if (char === '"') quoted = !quoted;
    if (char === delimiter && !quoted) {
      cells.push(unquoted(cell.trim()));
      cell = '';
    } else cell += char;
  }
  return [...cells, unquoted(cell.trim())];
}

function unquoted(cell: string): string {
  return cell.length >= 2 && cell.startsWith('"') && cell.endsWith('"')
    ? cell.slice(1, -1).replaceAll('""', '"').trim()
    : cell;
}
