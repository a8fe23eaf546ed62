/** Line drawings for people who never saw a fly: tap the cup, tip into a jar, tip to the animals, put back. */

const frame = (content: string) =>
  `<svg viewBox="0 0 100 70" role="img" aria-hidden="true" fill="none" stroke="#000" stroke-width="1.6" stroke-linecap="round" stroke-linejoin="round">${content}</svg>`;

/** A cup standing at x with its foot at y; the lid is dotted where air goes through. */
const cup = (x: number, y: number) =>
  `<path d="M${x} ${y - 38}l4 38h22l4-38z"/><path d="M${x - 2} ${y - 38}h34v-4h-34z"/><path d="M${x + 2} ${y - 8}h26" stroke-width="5" stroke="#888"/>`;

const jar = (x: number, y: number) => `<path d="M${x} ${y - 22}v20q0 2 2 2h20q2 0 2-2v-20"/>`;

const flies = (...places: [number, number][]) =>
  places.map(([x, y]) => `<ellipse cx="${x}" cy="${y}" rx="1.7" ry="1.1" fill="#000" stroke="none"/>`).join('');

const table = '<path d="M4 64h92"/>';

const arrow = (x: number, y: number, dx: number, dy: number) => {
  const length = Math.hypot(dx, dy);
  const [ux, uy] = [dx / length, dy / length];
  const [tx, ty] = [x + dx, y + dy];
  const left = `${(tx - 4 * ux + 3 * uy).toFixed(1)} ${(ty - 4 * uy - 3 * ux).toFixed(1)}`;
  const right = `${(tx - 4 * ux - 3 * uy).toFixed(1)} ${(ty - 4 * uy + 3 * ux).toFixed(1)}`;
  return `<path d="M${x} ${y}L${tx} ${ty}M${left}L${tx} ${ty}L${right}"/>`;
};

/** In the order of the sitter's four steps. */
export const feedingPictures: readonly [string, string, string, string] = [
  frame(
    `${table}${cup(34, 62)}${flies([42, 50], [48, 51], [53, 50], [46, 48])}${arrow(20, 30, 0, 24)}${arrow(80, 30, 0, 24)}`,
  ),
  frame(
    `${table}${jar(56, 63)}<g transform="rotate(118 38 26)">${cup(24, 42)}</g>${flies([62, 44], [66, 50], [70, 57], [63, 58])}`,
  ),
  frame(
    `<path d="M46 20h46v44h-46z"/><path d="M46 20l8-8h46"/><path d="M56 58q6-8 12 0m4 0q4-6 8 0"/><g transform="rotate(70 28 26)">${jar(14, 36)}</g>${flies([42, 30], [50, 34], [54, 42])}`,
  ),
  frame(
    `<path d="M4 64h92M4 14h92M10 14v50M90 14v50"/>${cup(18, 63)}${cup(56, 63)}${flies([26, 44], [64, 40], [70, 46])}`,
  ),
];
