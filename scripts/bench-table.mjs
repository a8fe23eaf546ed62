/** One table of the rows of many benches, in plain text; long cells go on below. */

const columns = [
  ['what', 70],
  ['figure', 40],
  ['baseline', 44],
  ['ratio', 12],
  ['target', 26],
];

/** @param {{ title: string, rows: object[], measured: string }[]} results as the benches gave them. */
export function benchTable(results) {
  const rows = results.flatMap(({ title, rows: own, measured }) => [
    [`# ${title} (${measured})`],
    ...own.map((row) => columns.map(([key]) => cell(row[key]))),
  ]);
  const widths = columns.map(([key, most], i) =>
    Math.min(most, Math.max(key.length, ...rows.filter((row) => row.length > 1).map((row) => row[i].length))),
  );
  const head = [columns.map(([key]) => key), widths.map((width) => '-'.repeat(width))];
  return [...head, ...rows].flatMap((row) => linesOf(row, widths)).join('\n');
}

/** A title stands alone on its line. */
function linesOf(row, widths) {
  if (row.length === 1) return ['', row[0]];
  const cells = row.map((text, i) => wrapped(text, widths[i]));
  const height = Math.max(...cells.map((lines) => lines.length));
  return Array.from({ length: height }, (_, line) =>
    cells
      .map((lines, i) => (lines[line] ?? '').padEnd(widths[i]))
      .join('  ')
      .trimEnd(),
  );
}

function wrapped(text, width) {
  const lines = [];
  let rest = text;
  while (rest.length > width) {
    const space = rest.lastIndexOf(' ', width);
    const cut = space > width / 2 ? space : width;
    lines.push(rest.slice(0, cut));
    rest = rest.slice(cut).trimStart();
  }
  return [...lines, rest];
}

/** Numbers to three figures; text as it is. */
function cell(value) {
  if (value === undefined || value === null) return '';
  return typeof value === 'number' ? String(Number(value.toPrecision(3))) : String(value);
}
