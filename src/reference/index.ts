export { type LifeValue, type Standing, standings, strainKeys, strainLife, strainValues } from './strain-life.ts';
export { type Source, source, sourceKeys, sourceLine } from './source.ts';
