/**
 * A holding of thousands as the worlds are simulated on it: living cups of one age that serve alike go
 * together as a block that shares its draws, as cups to come do. A household with fewer cups is left as it is.
 */
import type { CupCurve, ExistingCup, PlanningProblem, StrainProblem } from '../problem.ts';

/** Living cups of a strain up to which each is simulated apart. */
export const mostCupsApart = 96;

/** Blocks that a larger holding is cut into, at least. */
const blocksWanted = 48;

/** The same problem, its living cups in blocks where a strain has very many. */
export function grouped(problem: PlanningProblem): PlanningProblem {
  if (problem.strains.every(({ existing }) => existing.length <= mostCupsApart)) return problem;
  return { ...problem, strains: problem.strains.map(groupedStrain) };
}

/** Cups that a block of living cups stands for. */
export function cupsOf({ cups = 1 }: ExistingCup): number {
  return cups;
}

function groupedStrain(strain: StrainProblem): StrainProblem {
  const { existing } = strain;
  if (existing.length <= mostCupsApart) return strain;
  const size = Math.ceil(existing.length / blocksWanted);
  return { ...strain, existing: alike(existing).flatMap((cups) => inBlocks(cups, size).map(block)) };
}

/** Cups of one age that are thrown out and may give founders on the same days, in the problem's order. */
function alike(existing: ExistingCup[]): ExistingCup[][] {
  const byKind = new Map<string, ExistingCup[]>();
  for (const cup of existing) {
    const { founderFromAge, founderUntilAge, spentAge } = cup.curve;
    const kind = [
      cup.bought === true,
      cup.ageDays,
      cup.foundersFromDay,
      founderFromAge,
      founderUntilAge,
      spentAge,
    ].join(' ');
    const cups = byKind.get(kind);
    if (cups) cups.push(cup);
    else byKind.set(kind, [cup]);
  }
  return [...byKind.values()];
}

/** As few blocks of at most `size` as can be, as even as can be. */
function inBlocks(cups: ExistingCup[], size: number): ExistingCup[][] {
  const blocks = Math.ceil(cups.length / size);
  return Array.from({ length: blocks }, (_, b) =>
    cups.slice(Math.floor((b * cups.length) / blocks), Math.floor(((b + 1) * cups.length) / blocks)),
  );
}

function block(cups: ExistingCup[]): ExistingCup {
  const first = cups[0] as ExistingCup;
  if (cups.length === 1) return first;
  const draws = first.draws.logYield.length;
  const column = () => new Float64Array(draws);
  const own = { logPace: column(), logYield: column(), endAge: column(), fliesNow: column(), failShare: column() };
  for (let s = 0; s < draws; s++) drawTogether(cups, s, own);
  return { ...first, cups: cups.length, curve: meanCurve(cups), draws: own };
}

/**
 * One scenario of a block: its flies and its yield are sums, its pace is the mean weighted by yield, and the
 * part that fails does so at that part's mean age.
 */
function drawTogether(cups: ExistingCup[], s: number, into: Required<ExistingCup['draws']>): void {
  let [flies, yields, paces, failing, failAges, failed] = [0, 0, 0, 0, 0, 0];
  for (const { draws, curve } of cups) {
    const at = s % draws.logYield.length;
    const cupYield = Math.exp(draws.logYield[at] as number);
    const endAge = draws.endAge[at] as number;
    flies += draws.fliesNow[at] as number;
    yields += cupYield;
    paces += cupYield * (draws.logPace[at] as number);
    // One that would fail later is thrown out before.
    if (endAge >= curve.spentAge) continue;
    failing += cupYield;
    failAges += endAge;
    failed++;
  }
  into.fliesNow[s] = flies;
  into.logYield[s] = Math.log(yields);
  into.logPace[s] = paces / yields;
  into.endAge[s] = failed > 0 ? failAges / failed : Number.POSITIVE_INFINITY;
  into.failShare[s] = failing / yields;
}

function meanCurve(cups: ExistingCup[]): CupCurve {
  const { curve } = cups[0] as ExistingCup;
  const sum = new Float64Array(Math.max(...cups.map((cup) => cup.curve.emergedByAge.length)));
  for (const cup of cups) {
    cup.curve.emergedByAge.forEach((flies, age) => {
      sum[age] = (sum[age] as number) + flies;
    });
  }
  return { ...curve, emergedByAge: Float32Array.from(sum, (flies) => flies / cups.length) };
}
