export { type FeedingGroup, type FeedingPeriod, type UncertainArrival } from './feeding-period.ts';
export { type StrainNeed, type WantedFliesInput, wantedFlies } from './wanted-flies.ts';
