/** A share as a sentence says it. */
import { type Said, said } from '../foundation/index.ts';

/** Whole per cents, but never a false 100 or 0. */
export function percentSaid(share: number): Said {
  const perHundred = share > 0.99 && share < 1 ? 100 : 1;
  const percent = Math.round(100 * share * perHundred) / perHundred;
  if (share < 1 && percent >= 100) return said`> ${99.99} %`;
  return share > 0 && percent === 0 ? said`< ${1} %` : said`${percent} %`;
}
