/** The forecast in one sentence, the first thing that the page says. */
import type { ForecastAnswer } from '../../../app/index.ts';
import { longDay } from '../../days/calendar.ts';
import { chance } from '../../state/words.ts';
import { locale, t } from '../../text/text.svelte.ts';

export function supplySentence(forecast: ForecastAnswer): string {
  if (forecast.days.every((day) => day.wantedFlies === 0)) return t('today.noNeed');
  const noShortDay = chance(forecast.chanceOfNoShortfall, forecast.scenarios);
  if (forecast.firstRiskyDay === null)
    return t('today.enough', {
      until: longDay(forecast.days.at(-1)?.date ?? forecast.on, locale()),
      chance: noShortDay,
    });
  if (forecast.firstRiskyDay === forecast.on) return t('today.shortNow');
  return t('today.enoughUntil', { day: longDay(forecast.firstRiskyDay, locale()) });
}
