/** Who of a cup's flies emerge when: females and males by day, and the hours of the daily clock. */
import {
  type CultureCourse,
  emergenceByHour,
  emergenceBySex,
  type PaceTable,
  type StrainLife,
} from '../biology/index.ts';
import type { LifecycleAnswer } from './answers.ts';

/** Width of the morning gate, from lights on: value from memory (six to eight hours). */
const gateHours = 7;

/** `lightsOnHour` is the hour of the day at which it gets light; without one nothing is said of hours. */
export function emergenceDetail(
  life: StrainLife,
  pace: PaceTable,
  course: CultureCourse,
  lightsOnHour: number | undefined,
): Pick<LifecycleAnswer, 'femalesEmergedByDay' | 'malesEmergedByDay' | 'malesLaterHours' | 'emergedShareByHour'> {
  const { female, male } = emergenceBySex(life, pace, 0, course);
  const list = (series: Float64Array, decimals: number) => Array.from(series, (x) => Number(x.toFixed(decimals)));
  const gate = { opensHour: Math.floor(lightsOnHour ?? 0), widthHours: gateHours };
  const laterHours = 24 * (meanDay(male) - meanDay(female));
  return {
    malesLaterHours: Number.isFinite(laterHours) ? Number(laterHours.toFixed(1)) : null,
    femalesEmergedByDay: list(female, 1),
    malesEmergedByDay: list(male, 1),
    emergedShareByHour: lightsOnHour === undefined ? null : list(emergenceByHour(1, gate), 4),
  };
}

/** NaN when there are none. */
function meanDay(byDay: Float64Array): number {
  return byDay.reduce((sum, flies, day) => sum + flies * day, 0) / byDay.reduce((sum, flies) => sum + flies, 0);
}
