export { type LifeValue, type Standing, standings, strainKeys, strainLife, strainValues } from './strain-life.ts';
export { type Source, source, sourceKeys, sourceLine } from './source.ts';
export { type PublishedMutation, publishedMutations } from './mutations.ts';
export { type PublishedVirginWindow, publishedVirginWindows } from './virgin-windows.ts';
export { type PublishedWingEffect, publishedWingEffects } from './wing-temperature.ts';
