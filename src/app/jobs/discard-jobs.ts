/** Cups to throw out: past their time, or with mites or mould in them. */
import { dayFromNumber, type Said, said } from '../../foundation/index.ts';
import { heldOutDays } from '../nominal-cup.ts';
import type { CupHistory } from '../cup-history.ts';
import type { SaidJob } from './said-job.ts';

export function discardJobs(living: CupHistory[], today: number, daysAhead: number): SaidJob[] {
  return living.flatMap((cup) => {
    const sick = sicknessOf(cup);
    const on = sick ? today : Math.max(today, cup.start + Math.floor(cup.nominal.dates.spent));
    if (on > today + daysAhead) return [];
    const { culture, label, strain } = cup.culture;
    const date = dayFromNumber(on);
    const why = said`${label}: ${sick ?? pastItsTime(on - cup.start)}`;
    return [
      { id: `${date}:discard:${culture}`, date, kind: 'discard', strain, cultures: [culture], why, firmness: 'firm' },
    ];
  });
}

function pastItsTime(ageDays: number): Said {
  return said`at ${ageDays} days it gives hardly any more flies and mites may come; tap its last flies out into a clean holding cup and feed them within ${heldOutDays} days, then freeze it, closed, before it is binned. Write down as a harvest how many came out of it today: without that they are taken to have gone with it.`;
}

/** Flies of a cup with mites or mould are not carried over to anything. */
function sicknessOf({ culture }: CupHistory): Said | null {
  if (culture.seen.some((s) => s.mites)) {
    return said`mites were seen in it; keep it closed and apart, freeze it and bin it, and look at the cups that stood beside it.`;
  }
  if (culture.seen.some((s) => s.mould))
    return said`mould was seen in it; do not open it indoors, freeze it closed and bin it.`;
  return null;
}
