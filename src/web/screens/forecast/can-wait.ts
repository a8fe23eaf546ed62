/** Days on which the flies lack and nobody goes short: the ration is put off and given in time. */
import type { ForecastAnswer } from '../../../app/index.ts';

type Day = Pick<ForecastAnswer['days'][number], 'wantedFlies' | 'onHandFlies' | 'serviceLevel'>;

export function canWait({ wantedFlies, onHandFlies, serviceLevel }: Day, asked: number): boolean {
  return onHandFlies.p50 < wantedFlies && serviceLevel >= asked;
}
