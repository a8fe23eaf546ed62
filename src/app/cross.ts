/** Crosses asked at a door: text genotypes and named mutations in, shares by generation out. */
import { failed, ok, type Problem, type Result } from '../foundation/index.ts';
import { publishedMutations } from '../reference/index.ts';
import {
  type CrossAnswer,
  cross as crossOf,
  drift,
  type DriftAnswer,
  type MapDistance,
  type Selection,
} from '../strains/index.ts';

export interface CrossQuestion {
  /** Genotypes such as `vg/vg` or `vg/+; ap/+`; the symbols are those of data/mutations.csv. */
  female: string;
  male: string;
  generations: number;
  /** Distances in map units by pair, e.g. `vg-ap=11.8`, several separated by commas; none = from the map. */
  distances?: string;
  /** Which flies are culled in each generation, and whether they have mated by then. */
  cull?: 'winged' | 'flightless';
  mated?: boolean;
  /** Founders of each generation, half of either sex: shares become means over simulated lines. */
  founders?: number;
  seed?: number;
}

const replicas = 1000;
const mostFounders = 2000;

/** Exact shares; with `founders`, means over simulated lines with their spread. */
export function cross(question: CrossQuestion): Result<CrossAnswer | DriftAnswer> {
  const distances = readDistances(question.distances ?? '');
  const founders = question.founders;
  const problems = [...(distances.ok ? [] : distances.problems), ...foundersProblem(founders)];
  if (!distances.ok || problems.length > 0) return failed(...problems);
  const { female, male, generations, seed = 1 } = question;
  const input = {
    female,
    male,
    generations,
    loci: publishedMutations,
    distances: distances.value,
    selection: selectionOf(question),
  };
  if (founders === undefined) return crossOf(input);
  const half = { females: Math.ceil(founders / 2), males: Math.floor(founders / 2) };
  return drift({ ...input, founders: half, replicas, seed });
}

function foundersProblem(founders: number | undefined): Problem[] {
  if (founders === undefined || (Number.isInteger(founders) && founders >= 2 && founders <= mostFounders)) return [];
  return [{ where: 'founders', found: `${founders}`, expected: `a whole number from 2 to ${mostFounders}` }];
}

function selectionOf({ cull, mated = false }: CrossQuestion): Selection | undefined {
  if (!cull) return undefined;
  return { keep: cull === 'winged' ? 'flightless' : 'winged', of: mated ? 'mated' : 'virgins' };
}

/** `vg-ap=11.8, b-vg=18.5` as distances; the range is checked with the loci. */
function readDistances(text: string): Result<MapDistance[]> {
  const distances: MapDistance[] = [];
  const problems: Problem[] = [];
  for (const part of text.split(',').map((one) => one.trim())) {
    if (part === '') continue;
    const match = /^([^\s=-]+)-([^\s=-]+)=(-?[\d.]+)$/.exec(part);
    const mapUnits = Number(match?.[3]);
    if (match?.[1] && match[2] && Number.isFinite(mapUnits)) distances.push({ loci: [match[1], match[2]], mapUnits });
    else
      problems.push({ where: 'distances', found: `"${part}"`, expected: 'two loci and map units, as in vg-ap=11.8' });
  }
  return problems.length > 0 ? failed(...problems) : ok(distances);
}
