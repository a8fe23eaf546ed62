/** What the forecast comes to, before it is put into words. */
import type { ForecastAnswer } from '../../../app/index.ts';

export type SupplyVerdict = 'noNeed' | 'enough' | 'noneNow' | 'shortNow' | 'enoughUntil';

type Judged = Pick<ForecastAnswer, 'on' | 'firstRiskyDay'> & {
  days: Pick<ForecastAnswer['days'][number], 'date' | 'wantedFlies' | 'onHandFlies'>[];
};

/** `noneNow`: something is wanted today and no cup holds a fly, even if whoever wants it can wait. */
export function supplyVerdict({ on, days, firstRiskyDay }: Judged): SupplyVerdict {
  if (days.every((day) => day.wantedFlies === 0)) return 'noNeed';
  if (firstRiskyDay === null) return 'enough';
  const wanting = days.filter((day) => day.date === on && day.wantedFlies > 0);
  if (wanting.length > 0 && wanting.every((day) => day.onHandFlies.p95 < 1)) return 'noneNow';
  return firstRiskyDay === on ? 'shortNow' : 'enoughUntil';
}
