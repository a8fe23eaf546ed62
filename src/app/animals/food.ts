/** What the week's food gives: protein, fat, calcium to phosphorus, and what dust does while it stays on. */
import {
  dustLeftShare,
  dustMgFor,
  type FlyNutrients,
  type FoodQuality,
  foodQuality,
  type Range,
  type Supplement,
} from '../../animals/index.ts';
import { addDays, type Day } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import { publishedDustingFigures, publishedFlyCompositions } from '../../reference/index.ts';
import type { AnimalsAnswer } from './animal-answers.ts';

/** A feeding as far as food goes. */
export interface FedFlies {
  strain: string;
  flies: number;
  supplements: readonly string[];
}

const figureRow = (item: string) => {
  const found = publishedDustingFigures.find((one) => one.item === item);
  if (!found) throw new RangeError(`weekQuality: dusting.csv has no ${item}`);
  return found;
};
const figure = (item: string) => figureRow(item).value;

/** Calcium carbonate stands for a plain calcium powder; what a label says of another goes by its shares. */
const carbonate: Supplement = {
  supplement: 'calcium',
  calciumShare: figure('calcium-in-carbonate'),
  phosphorusShare: 0,
};

/** Calcium is named alike in the page's languages. */
const namesCalcium = /[ck]al[cz]i?um/i;

/**
 * Null when nothing is fed. Feedings whose supplements name calcium are taken as dusted for 1.5 : 1, and as
 * eaten with all of it, or with what is left after `eatenAfterHours`.
 */
export function qualityOf(
  fed: readonly FedFlies[],
  flyMassMg: ReadonlyMap<string, Range>,
  eatenAfterHours = 0,
): FoodQuality | null {
  const flies = flyNutrients();
  const left = dustLeftShare(eatenAfterHours, figure('stays-hours'));
  const feedings = fed.map(({ strain, flies: count, supplements }) => {
    const flyMg = count * (flyMassMg.get(strain)?.middle ?? 0);
    const mg = dustMgFor(flyMg, figure('target-calcium-to-phosphorus'), flies, carbonate) * left;
    return { flyMg, dust: supplements.some((name) => namesCalcium.test(name)) ? [{ supplement: carbonate, mg }] : [] };
  });
  return feedings.some(({ flyMg }) => flyMg > 0) ? foodQuality(feedings, flies) : null;
}

export function weekQuality(
  week: readonly FedFlies[],
  flyMassMg: ReadonlyMap<string, Range>,
): AnimalsAnswer['quality'] {
  const lateHours = figure('stays-hours');
  const eaten = qualityOf(week, flyMassMg);
  if (!eaten) return null;
  const { calciumToPhosphorus, verdict, proteinMg, fatMg } = eaten;
  const count = week.reduce((sum, { flies }) => sum + flies, 0);
  const flyMg = week.reduce((sum, { flies, strain }) => sum + flies * (flyMassMg.get(strain)?.middle ?? 0), 0);
  return {
    calciumToPhosphorus,
    lateCalciumToPhosphorus: qualityOf(week, flyMassMg, lateHours)?.calciumToPhosphorus ?? null,
    lateHours,
    verdict,
    proteinMg,
    fatMg,
    carbonateMgPer100Flies: dustMgFor(
      (100 * flyMg) / count,
      figure('target-calcium-to-phosphorus'),
      flyNutrients(),
      carbonate,
    ),
  };
}

/** Feedings of the seven days before `on` of which the dust was written; null when none was. */
export function qualityAsFed(
  facts: Facts,
  on: Day,
  flyMassMg: ReadonlyMap<string, Range>,
): AnimalsAnswer['qualityAsFed'] {
  const from = addDays(on, -7);
  const known = facts.feedings.flatMap(({ on: fedOn, group, flies, supplements }) => {
    const strain = facts.groups.find((one) => one.group === group)?.periods.findLast((p) => p.from <= fedOn)?.strain;
    return supplements && strain !== undefined && fedOn >= from && fedOn <= on ? [{ strain, flies, supplements }] : [];
  });
  if (known.length === 0) return null;
  return {
    feedings: known.length,
    calciumToPhosphorus: qualityOf(known, flyMassMg)?.calciumToPhosphorus ?? null,
  };
}

export function dustStaysHours(): AnimalsAnswer['dustStaysHours'] {
  const { value, low, high } = figureRow('stays-hours');
  return { low: low ?? value, middle: value, high: high ?? value };
}

/** The one analysis that was read with both minerals. */
function flyNutrients(): FlyNutrients {
  for (const { status, calciumOfDry, phosphorusOfDry, ...rest } of publishedFlyCompositions)
    if (status === 'read' && calciumOfDry !== null && phosphorusOfDry !== null)
      return { ...rest, calciumOfDry, phosphorusOfDry };
  throw new RangeError('weekQuality: fly-composition.csv has no analysis with minerals');
}
