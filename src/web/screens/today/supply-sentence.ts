/** The forecast in one sentence, the first thing that the page says. */
import type { ForecastAnswer } from '../../../app/index.ts';
import { longDay } from '../../days/calendar.ts';
import { chance } from '../../state/words.ts';
import { locale, t } from '../../text/text.svelte.ts';
import { supplyVerdict } from './supply-verdict.ts';

export function supplySentence(forecast: ForecastAnswer): string {
  const verdict = supplyVerdict(forecast);
  const last = forecast.days.at(-1)?.date ?? forecast.on;
  const day = verdict === 'enough' ? last : (forecast.firstRiskyDay ?? forecast.on);
  return t(`today.${verdict}`, {
    day: longDay(day, locale()),
    until: longDay(day, locale()),
    chance: chance(forecast.chanceOfNoShortfall, forecast.scenarios),
  });
}
