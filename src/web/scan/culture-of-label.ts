/** Which cup a label's code means. */
import type { Facts } from '../../logbook/index.ts';

/**
 * A label holds the cup's address, `http://anywhere/#/culture/M12`; which computer it names does not
 * matter. A bare key or label counts too. Null when this logbook has no such cup.
 */
export function cultureOfLabel(text: string, facts: Facts): string | null {
  const key = keyInAddress(text) ?? text.trim();
  const found =
    facts.cultures.find((each) => each.culture === key) ??
    facts.cultures.find((each) => each.label.toLowerCase() === key.toLowerCase());
  return found?.culture ?? null;
}

function keyInAddress(text: string): string | null {
  const key = /#\/culture\/([^/?#]+)/.exec(text)?.[1];
  try {
    return key === undefined ? null : decodeURIComponent(key);
  } catch {
    return null;
  }
}
