/** The household's strains as text. */
import type { StrainBook } from '../../app/index.ts';
import { table } from './layout.ts';

export function strainsText({ strains }: StrainBook): string[] {
  const rows = strains.map((each) => [
    each.name || each.strain,
    `${each.temperatureC.toFixed(1)} C`,
    each.firstFliesDays.toFixed(1),
    `${Math.round(each.foundersFromDays)} to ${Math.round(each.foundersUntilDays)}`,
    String(Math.round(each.spentDays)),
    String(Math.round(each.fliesPerCup)),
    each.flyMassMg ? each.flyMassMg.middle.toFixed(2) : '',
    each.mutation,
  ]);
  const head = ['strain', 'place', 'first flies', 'founders', 'spent', 'flies a cup', 'mg a fly', 'mutation'];
  return table(head, rows, [1, 2, 3, 4, 5, 6]);
}
