/** A plain picture of curves and points as SVG text: axes with ticks, a key, no colour that must be told apart. */
export interface Series {
  name: string;
  points: [number, number][];
  kind: 'line' | 'dashed' | 'dots' | 'crosses' | 'band';
  colour: string;
}

export interface Plot {
  title: string;
  x: { label: string; low: number; high: number; step: number };
  y: { label: string; low: number; high: number; step: number };
  series: Series[];
}

const width = 640;
const height = 380;
const frame = { left: 60, right: 20, top: 36, bottom: 46 };

/** The picture as SVG 1.1 text; series that leave the axes are cut at the frame. */
export function drawPlot(plot: Plot): string {
  const x = scale(plot.x, frame.left, width - frame.right);
  const y = scale(plot.y, height - frame.bottom, frame.top);
  const parts = [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" font-family="sans-serif" font-size="12">`,
    `<title>${escape(plot.title)}</title>`,
    `<rect width="${width}" height="${height}" fill="#fff"/>`,
    `<text x="${frame.left}" y="20" font-size="14" font-weight="bold">${escape(plot.title)}</text>`,
    `<clipPath id="c"><rect x="${frame.left}" y="${frame.top}" width="${width - frame.left - frame.right}" height="${height - frame.top - frame.bottom}"/></clipPath>`,
    ...ticks(plot, x, y),
    '<g clip-path="url(#c)">',
    ...plot.series.map((series) => drawSeries(within(series, plot), x, y)),
    '</g>',
    ...key(plot.series),
    '</svg>',
  ];
  return `${parts.join('\n')}\n`;
}

/** Points on the axes only: not every viewer cuts at the frame. */
function within(series: Series, { x, y }: Plot): Series {
  const points = series.points.filter(([a, b]) => a >= x.low && a <= x.high && b >= y.low && b <= y.high);
  return { ...series, points };
}

type Scale = (value: number) => number;

function scale(axis: { low: number; high: number }, from: number, to: number): Scale {
  return (value) => from + ((value - axis.low) / (axis.high - axis.low)) * (to - from);
}

function ticks(plot: Plot, x: Scale, y: Scale): string[] {
  const bottom = height - frame.bottom;
  const marks = (axis: { low: number; high: number; step: number }) =>
    Array.from({ length: Math.floor((axis.high - axis.low) / axis.step + 1.001) }, (_, i) => axis.low + i * axis.step);
  return [
    ...marks(plot.x).map(
      (at) =>
        `<path d="M${n(x(at))} ${frame.top}V${bottom}" stroke="#eee"/><text x="${n(x(at))}" y="${bottom + 16}" text-anchor="middle">${short(at)}</text>`,
    ),
    ...marks(plot.y).map(
      (at) =>
        `<path d="M${frame.left} ${n(y(at))}H${width - frame.right}" stroke="#eee"/><text x="${frame.left - 6}" y="${n(y(at) + 4)}" text-anchor="end">${short(at)}</text>`,
    ),
    `<path d="M${frame.left} ${frame.top}V${bottom}H${width - frame.right}" fill="none" stroke="#333"/>`,
    `<text x="${(frame.left + width - frame.right) / 2}" y="${height - 10}" text-anchor="middle">${escape(plot.x.label)}</text>`,
    `<text transform="translate(14 ${(frame.top + bottom) / 2}) rotate(-90)" text-anchor="middle">${escape(plot.y.label)}</text>`,
  ];
}

function drawSeries(series: Series, x: Scale, y: Scale): string {
  const at = series.points.map(([a, b]) => [n(x(a)), n(y(b))] as const);
  const path = `M${at.map(([a, b]) => `${a} ${b}`).join('L')}`;
  if (series.kind === 'band') return `<path d="${path}Z" fill="${series.colour}" opacity=".25"/>`;
  if (series.kind === 'line') return `<path d="${path}" fill="none" stroke="${series.colour}" stroke-width="2"/>`;
  if (series.kind === 'dashed') {
    return `<path d="${path}" fill="none" stroke="${series.colour}" stroke-width="1.5" stroke-dasharray="6 4"/>`;
  }
  if (series.kind === 'dots') {
    return at.map(([a, b]) => `<circle cx="${a}" cy="${b}" r="4" fill="${series.colour}"/>`).join('');
  }
  return at
    .map(([a, b]) => `<path d="M${n(a - 4)} ${n(b - 4)}l8 8m0-8l-8 8" stroke="${series.colour}" stroke-width="1.5"/>`)
    .join('');
}

function key(series: Series[]): string[] {
  return series.map((one, i) => {
    const y = frame.top + 14 + 16 * i;
    const x = width - frame.right - 8;
    return `<text x="${x}" y="${y}" text-anchor="end" fill="${one.colour}">${escape(one.name)}</text>`;
  });
}

const n = (value: number) => Math.round(value * 10) / 10;
const short = (value: number) => String(Math.round(value * 1000) / 1000);
const escape = (text: string) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
