/** The cups on which engine and fly-by-fly simulation are compared: temperature, founders, medium, harvest. */
import type { StrainLife } from '../../src/biology/index.ts';
import { strainLife } from '../../src/reference/index.ts';
import type { OracleCase } from './biology-oracle.ts';

const melanogaster = strainLife('melanogaster') as StrainLife;
const hydei = strainLife('hydei') as StrainLife;
const cup = { founders: 60, founderAgeDays: 12, mediumMassG: 180, surfaceCm2: 85 };
const half = (fromAgeDays: number) => ({ everyDays: 1, share: 0.5, fromAgeDays });
const wave = (meanC: number, swingC: number, days: number) =>
  Float64Array.from({ length: 24 * days }, (_, hour) => meanC + swingC * Math.sin((2 * Math.PI * hour) / 24));

const ordinary: OracleCase = {
  name: 'ordinary cup at 24 C',
  strain: melanogaster,
  hourlyC: wave(24, 0, 40),
  conditions: cup,
  harvest: half(12),
  days: 30,
};

export const quickCases: OracleCase[] = [
  ordinary,
  {
    ...ordinary,
    name: '20 C swinging by 3 C, every third day',
    hourlyC: wave(20, 3, 40),
    harvest: { everyDays: 3, share: 0.8, fromAgeDays: 16 },
    days: 36,
  },
];

export const slowCases: OracleCase[] = [
  ...quickCases,
  { ...ordinary, name: '200 founders', conditions: { ...cup, founders: 200 } },
  { ...ordinary, name: 'little medium', conditions: { ...cup, mediumMassG: 60 } },
  { ...ordinary, name: 'nothing harvested', harvest: { everyDays: 1, share: 0, fromAgeDays: 12 } },
  { ...ordinary, name: 'hot, 27 C', hourlyC: wave(27, 1, 40), days: 26 },
  { ...ordinary, name: 'hydei at 24 C', strain: hydei, hourlyC: wave(24, 1, 60), harvest: half(19), days: 41 },
];

/** Few founders, for what chance does. */
export function fewFounders(founders: number): OracleCase {
  return { ...ordinary, name: `${founders} founders`, conditions: { ...cup, founders, founderAgeDays: 4 }, days: 29 };
}
