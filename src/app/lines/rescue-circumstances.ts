/** What every rescue in this household starts from. */
import { publishedVirginWindows } from '../../reference/index.ts';
import { virginWindowHours } from '../../strains/index.ts';

/** A warning without pictures, steps and contacts. */
export const nothingMore = { outlooks: [], steps: [], contacts: [] };

/** Flies looked at in each check of a rescue, and virgins taken. */
export const usualRescue = { fliesLookedAt: 200, founders: { females: 20, males: 20 } };

const windows = publishedVirginWindows.filter(({ species }) => species === 'melanogaster');

/** Hours in which a newly emerged female has not mated, within the temperatures that are published. */
export function virginHours(temperatureC: number): number {
  return virginWindowHours(windows, Math.min(29, Math.max(10, temperatureC)));
}
