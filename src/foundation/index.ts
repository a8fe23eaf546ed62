export { type ChanceFromWorlds, chanceFromWorlds } from './chance-from-worlds.ts';
export {
  addDays,
  type Day,
  type DayNumber,
  day,
  dayFromNumber,
  dayNumber,
  dayOfYear,
  daysBetween,
  monthOf,
  parseDay,
  type Weekday,
  weekdayIndex,
  weekdayOf,
  weekdays,
} from './day.ts';
export { gatheredProblems } from './gathered-problems.ts';
export { nearestName } from './nearest-name.ts';
export { weekdaySaid } from './weekday-said.ts';
export { failed, ok, type Problem, problemText, type Result } from './result.ts';
export { type RandomStream, randomStream } from './random.ts';
export { counterNormal, counterUniform, mix32 } from './counter-random.ts';
export { normalCdf, normalQuantile } from './normal-distribution.ts';
export { type Band, bandOf, quantileSorted } from './quantile.ts';
export {
  isSaid,
  type Said,
  type SaidValue,
  type DegreeUnit,
  degreeUnits,
  said,
  saidTogether,
  sentence,
  type Told,
  told,
  type Words,
} from './said.ts';
export { risingAt, risingReaches } from './rising-table.ts';
