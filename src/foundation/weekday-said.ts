/** The days of the week in sentences. */
import type { Weekday } from './day.ts';
import { type Said, said } from './said.ts';

export const weekdaySaid: Record<Weekday, Said> = {
  mon: said`Monday`,
  tue: said`Tuesday`,
  wed: said`Wednesday`,
  thu: said`Thursday`,
  fri: said`Friday`,
  sat: said`Saturday`,
  sun: said`Sunday`,
};
