/** What a change is called. */
import { type Day, type Said, said, weekdaySaid } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import type { Change } from './change.ts';

export const asItIs = said`As it is`;

export function changeTitle(facts: Facts, change: Change): Said {
  switch (change.change) {
    case 'animals':
      return change.factor >= 1
        ? said`${percentOf(change.factor - 1)} % more animals`
        : said`${percentOf(1 - change.factor)} % fewer animals`;
    case 'warmer':
      return change.byC >= 0
        ? said`${{ degreesApartC: change.byC }} warmer`
        : said`${{ degreesApartC: -change.byC }} cooler`;
    case 'away':
      return said`Away from ${{ day: change.from as Day }} to ${{ day: change.until as Day }}`;
    case 'lost':
      return said`${labelOf(facts, change.culture)} fails today`;
    case 'weekdays':
      return said`Work on ${{ list: change.weekdays.map((weekday) => weekdaySaid[weekday]) }}`;
    case 'cups':
      return said`Cups ${change.factor} times as large`;
    case 'service':
      return said`Every day ${Math.round(change.level * 10_000) / 100} % safe`;
    case 'purchases':
      return purchaseTitles[change.mode];
  }
}

const purchaseTitles = {
  none: said`Nothing bought`,
  bridge: said`Bought only until home-grown flies come`,
  any: said`Bought whenever it helps`,
};

function percentOf(share: number): number {
  return Math.round(share * 100);
}

function labelOf(facts: Facts, culture: string): string {
  return facts.cultures.find((c) => c.culture === culture)?.label ?? culture;
}
