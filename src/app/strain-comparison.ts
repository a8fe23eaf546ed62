/** Strains compared by what a cup of each gives: the books' cup as usually started, at the yield believed. */
import { comparison, differenceOf, type Beliefs, type Lesson } from '../learning/index.ts';
import type { Histories } from './evidence.ts';

/** The strain against the one with most cups; none for that one itself, or without cups that spoke. */
export function strainComparisons(
  strain: string,
  histories: Histories,
  beliefs: Beliefs,
  names: ReadonlyMap<string, string>,
): Lesson[] {
  const spoke = (key: string) => beliefs.byStrain.get(key)?.informativeCups ?? 0;
  const usual = [...histories.keys()].reduce((a, b) => (spoke(b) > spoke(a) ? b : a), strain);
  const [mine, its] = [beliefs.byStrain.get(strain), beliefs.byStrain.get(usual)];
  if (usual === strain || !mine || !its || mine.informativeCups === 0) return [];
  const flies = (key: string, logs: Float64Array) => logs.map((log) => log + Math.log(nominalFlies(histories, key)));
  const difference = differenceOf(flies(strain, mine.draws.logYield), flies(usual, its.draws.logYield));
  const cups = mine.informativeCups + its.informativeCups;
  const cupSd = Math.sqrt((mine.cupYieldSd ** 2 + its.cupYieldSd ** 2) / 2);
  return [
    comparison(
      'strain',
      { first: names.get(strain) ?? strain, second: names.get(usual) ?? usual, cups },
      difference,
      cupSd,
    ),
  ];
}

/** Flies that the books expect of a strain's cups as they were started here: the mean over all of them. */
function nominalFlies(histories: Histories, strain: string): number {
  const cups = histories.get(strain) ?? [];
  const totals = cups.map(({ nominal }) => nominal.course.emerged.reduce((a, b) => a + b, 0));
  return Math.max(1, totals.reduce((a, b) => a + b, 0) / Math.max(1, totals.length));
}
