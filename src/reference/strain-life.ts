/** Strains as parameter sets, read from data/strains.csv and data/strain-life.csv. */
import { briere2, type Curve, type StrainLife } from '../biology/index.ts';
import lifeText from '../../data/strain-life.csv?raw';
import strainsText from '../../data/strains.csv?raw';
import { type CsvRow, csvRows } from './csv-rows.ts';

const lifeFile = 'strain-life.csv';

/** How well a value is founded: seen in a source, computed from one, or not in any. */
export const standings = ['published', 'derived', 'memory', 'practice'] as const;
export type Standing = (typeof standings)[number];

/** One value of the table with its origin. */
export interface LifeValue {
  strain: string;
  quantity: string;
  /** Where on a curve (a temperature, C), or null for a single number. */
  at: number | null;
  value: number;
  low: number | null;
  high: number | null;
  unit: string;
  source: string;
  standing: Standing;
}

const strains = csvRows('strains.csv', strainsText).map((row) => ({
  strain: row.text('strain'),
  base: row.text('base'),
  name: row.text('name'),
  species: row.text('species'),
}));
const values = csvRows(lifeFile, lifeText).map(toValue);
const made = new Map<string, StrainLife>();

/** Keys of the strains that can be a base. */
export function strainKeys(): string[] {
  return strains.map((row) => row.strain);
}

/** The life of the strain `key`, or undefined when there is none of that key. The same object each time. */
export function strainLife(key: string): StrainLife | undefined {
  const known = made.get(key);
  if (known) return known;
  const row = strains.find((strain) => strain.strain === key);
  if (!row) return undefined;
  const life = assemble(key, row.name, row.species, quantitiesOf(key));
  made.set(key, life);
  return life;
}

/** Every value that the strain `key` is made of, its base's included, each with its origin. */
export function strainValues(key: string): LifeValue[] {
  return [...quantitiesOf(key).values()].flat();
}

type Quantities = Map<string, LifeValue[]>;

function quantitiesOf(key: string): Quantities {
  const row = strains.find((strain) => strain.strain === key);
  if (!row) return new Map();
  const found: Quantities = row.base === '' ? new Map() : new Map(quantitiesOf(row.base));
  // A strain's own points replace the whole of its base's curve, not single points of it.
  const own = values.filter((value) => value.strain === key);
  for (const { quantity } of own) {
    found.set(
      quantity,
      own.filter((value) => value.quantity === quantity),
    );
  }
  return found;
}

function toValue(row: CsvRow): LifeValue {
  return {
    strain: row.text('strain'),
    quantity: row.text('quantity'),
    at: row.numberOrNull('at'),
    value: row.number('value'),
    low: row.numberOrNull('low'),
    high: row.numberOrNull('high'),
    unit: row.text('unit'),
    source: row.text('source'),
    standing: row.oneOf('standing', standings),
  };
}

function assemble(key: string, name: string, species: string, quantities: Quantities): StrainLife {
  const one = (quantity: string) => singleOf(quantities, quantity);
  const curve = (quantity: string) => curveOf(quantities, quantity);
  const rate = {
    a: one('briere2.a'),
    lowerC: one('briere2.lowerC'),
    upperC: one('briere2.upperC'),
    m: one('briere2.m'),
  };
  const slowness = one('development.slowness');
  const gompertzA = curve('gompertz.a');
  return {
    key,
    name,
    species,
    developmentRate: (temperatureC) => briere2(rate, temperatureC) / slowness,
    developmentLimitsC: { lower: rate.lowerC, upper: rate.upperC },
    stageShares: { egg: one('stageShare.egg'), larva: one('stageShare.larva'), pupa: one('stageShare.pupa') },
    developmentCv: one('developmentCv'),
    crowdedCv: one('crowdedCv'),
    maleTimeRatio: curve('maleTimeRatio'),
    viability: curve('viability'),
    heatDeathPerDay: curve('heatDeathPerDay'),
    laying: layingOf(one, curve),
    adult: {
      gompertz: { temperatureC: gompertzA.at, a: gompertzA.value, b: curve('gompertz.b').value },
      cupDeathPerDay: one('adult.cupDeathPerDay'),
      maleShare: one('adult.maleShare'),
    },
    crowding: crowdingOf(one),
    medium: { fliesPerG: one('medium.fliesPerG'), lifeDays: curve('medium.lifeDays') },
    massMg: { female: one('mass.female'), male: one('mass.male') },
    massByTemperature: curve('massByTemperature'),
    founders: {
      settlingDays: one('founders.settlingDays'),
      readyDays: one('founders.readyDays'),
      windowDays: curve('founders.windowDays'),
      throwOutDays: curve('founders.throwOutDays'),
    },
    mites: { growthPerDay: curve('mites.growthPerDay'), logGrowthToTrouble: one('mites.logGrowthToTrouble') },
  };
}

type One = (quantity: string) => number;
type Many = (quantity: string) => Curve;

function layingOf(one: One, curve: Many): StrainLife['laying'] {
  return {
    peakEggsPerDay: one('laying.peakEggsPerDay'),
    firstEggsDays: one('laying.firstEggsDays'),
    halfAgeDays: one('laying.halfAgeDays'),
    declineWidthDays: one('laying.declineWidthDays'),
    cupShare: one('laying.cupShare'),
    byTemperature: curve('laying.byTemperature'),
    maleFertility: curve('laying.maleFertility'),
    halfAdultsPerCm2: one('laying.halfAdultsPerCm2'),
  };
}

function crowdingOf(one: One): StrainLife['crowding'] {
  return {
    larvaePerCm2: one('crowding.larvaePerCm2'),
    feedingDepthCm: one('crowding.feedingDepthCm'),
    baseDeaths: one('crowding.baseDeaths'),
    crowdedDeaths: one('crowding.crowdedDeaths'),
    delay: one('crowding.delay'),
    massHalf: one('crowding.massHalf'),
    massFloor: one('crowding.massFloor'),
  };
}

function singleOf(quantities: Quantities, quantity: string): number {
  const found = quantities.get(quantity)?.[0];
  if (!found) throw new RangeError(`${lifeFile}: ${quantity} is missing`);
  return found.value;
}

function curveOf(quantities: Quantities, quantity: string): Curve {
  const points = (quantities.get(quantity) ?? []).filter((value) => value.at !== null);
  if (points.length === 0) throw new RangeError(`${lifeFile}: ${quantity} has no points`);
  const sorted = points.toSorted((p, q) => (p.at ?? 0) - (q.at ?? 0));
  return { at: sorted.map((point) => point.at ?? 0), value: sorted.map((point) => point.value) };
}
