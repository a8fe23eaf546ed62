/** Text made safe for HTML and SVG. */

const entities: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

export function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (c) => entities[c] as string);
}

/** A length in millimetres, to a hundredth. */
export function mm(value: number): string {
  return String(Math.round(value * 100) / 100);
}
