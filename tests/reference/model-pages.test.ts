/** The pages of docs/models say the values that data/ holds: each phrase is made from the tables and looked for. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ordinaryFailure } from '../../src/biology/index.ts';
import {
  dampAirPercent,
  dryAirPercent,
  dryMedium,
  excessYeast,
  wetMedium,
  withoutYeastLaying,
} from '../../src/biology/life/moisture.ts';
import { strainValues } from '../../src/reference/index.ts';

/** As pages print numbers: no leading zero, the fewest digits. */
const plain = (value: number) => String(value).replace(/^0\./, '.');

function valueOf(strain: string, quantity: string, at: number | null = null): string {
  const row = strainValues(strain).find((each) => each.quantity === quantity && each.at === at);
  if (!row) throw new Error(`${strain} has no ${quantity} at ${at}`);
  return plain(row.value);
}

const fly = (quantity: string, at: number | null = null) => valueOf('melanogaster', quantity, at);
const hydei = (quantity: string, at: number | null = null) => valueOf('hydei', quantity, at);
const curve = (quantity: string, at: number[], of = fly) => at.map((t) => of(quantity, t)).join(' / ');
const percent = (ratio: string) => `${(100 * (Number(ratio) - 1)).toFixed(1)} %`;

/** A state's effects as the page's columns. */
function effects(state: typeof wetMedium): string {
  const { adultDeaths, laying, larvalSpeed, larvalDeaths } = state;
  return `x ${adultDeaths} | x ${plain(laying)} | x ${plain(larvalSpeed)} | + ${plain(larvalDeaths)}`;
}

const phrases: Record<string, string[]> = {
  development: [
    `a ${(Number(fly('briere2.a')) * 1e4).toFixed(4)}e-4, T0 ${fly('briere2.lowerC')}, Tm ${fly('briere2.upperC')}, m ${fly('briere2.m')}`,
    `takes ${hydei('development.slowness')} times as long`,
    `Egg ${fly('stageShare.egg')}, larva ${fly('stageShare.larva')}, puparium ${fly('stageShare.pupa')}`,
    `CV ${fly('developmentCv')} alone`,
    `to ${fly('crowdedCv')} in a badly crowded cup`,
    `${percent(fly('maleTimeRatio', 25))} longer at 25 C`,
    `Viability ${fly('viability', 26)} up to 26 C, ${Number(fly('viability', 28)).toFixed(2).slice(1)} at 28, ${fly('viability', 32)} at 32`,
  ],
  adults: [
    `${fly('gompertz.a', 18)}, ${Number(fly('gompertz.b', 18)).toFixed(4).slice(1)}`,
    `c | share of it in an ordinary cup | ${Number(fly('laying.cupShare')).toFixed(2).slice(1)}`,
    `| ${fly('adult.cupDeathPerDay')} (.03 to .08)`,
    `| ${fly('laying.peakEggsPerDay')}, ${fly('laying.halfAgeDays')} d, ${fly('laying.declineWidthDays')} d |`,
    `| ${curve('laying.byTemperature', [15, 18, 21, 25, 28, 30])} |`,
    `| ${fly('laying.firstEggsDays')}; hydei ${hydei('laying.firstEggsDays')} `,
    `| ${fly('laying.halfAdultsPerCm2')}; hydei ${hydei('laying.halfAdultsPerCm2')} |`,
  ],
  culture: [
    `| ${fly('crowding.larvaePerCm2')}; ${hydei('crowding.larvaePerCm2')} per cm2 |`,
    `e^(-depth / ${fly('crowding.feedingDepthCm')} cm)`,
    `| ${fly('crowding.baseDeaths')} + ${fly('crowding.crowdedDeaths')} X |`,
    `1 + ${fly('crowding.delay')} ln(1 + X)`,
    `not below ${fly('crowding.massFloor')}`,
    `| ${fly('medium.fliesPerG')} (4 to 12); ${hydei('medium.fliesPerG')} |`,
    `life ${fly('medium.lifeDays', 24)} d at 24 C; ${hydei('medium.lifeDays', 24)} d`,
    `${curve('founders.throwOutDays', [21, 23, 25])} d at 21 / 23 / 25 C; hydei ${curve('founders.throwOutDays', [21, 23, 25], hydei)}`,
  ],
  moisture: [
    `| ${effects(wetMedium)} |`,
    `| ${effects(dryMedium)} |`,
    `| no live yeast | | x ${plain(withoutYeastLaying)} |`,
    `excess, first ${excessYeast.days} days | x ${excessYeast.adultDeaths} | | | + ${Number(excessYeast.larvalDeaths).toFixed(2).slice(1)} |`,
    `below ${dryAirPercent} %`,
    `above ${dampAirPercent} %`,
  ],
  mass: [
    `| ${fly('mass.female')}, ${fly('mass.male')} mg`,
    `x ${Number(fly('massByTemperature', 17)).toFixed(2)}`,
    `| ${hydei('mass.female')}, ${hydei('mass.male')} mg`,
  ],
  'failure-and-mites': [
    `| ${curve('mites.growthPerDay', [10, 15, 20]).replaceAll('0.', '.')} / .160 |`,
    `| ${fly('mites.growthPerDay', 30)}, doubling in 1.9 days |`,
    `e^${fly('mites.logGrowthToTrouble')}-fold`,
    `| ${plain(ordinaryFailure.mould)} mould, ${plain(ordinaryFailure.other)} other, ${plain(ordinaryFailure.mites)} mites |`,
  ],
};

describe.each(Object.entries(phrases))('docs/models/%s.md', (page, said) => {
  const text = readFileSync(`docs/models/${page}.md`, 'utf8');
  test.each(said)('says %s', (phrase) => {
    expect(text).toContain(phrase);
  });
});
