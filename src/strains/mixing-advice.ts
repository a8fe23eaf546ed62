/**
 * "May I put these two strains together?" answered before it happens: what the next generations would
 * be, under each thing that may be true where a strain's mutation is not known.
 */
import { ok, type Result, type Said, said } from '../foundation/index.ts';
import { type Locus, unknownRecessive } from './locus.ts';
import { mixture } from './mixture.ts';
import { percentSaid } from './percent-said.ts';

export interface StrainToMix {
  strain: string;
  species: string;
  /** Symbol of the locus that keeps it from flying; `unknown`; or `wild` when it flies. */
  locus: string;
}

export interface MixingInput {
  first: StrainToMix;
  second: StrainToMix;
  /** Share of the founders that are of the first strain, 0 to 1; a half when not given. */
  firstShare?: number;
  generations: number;
  loci: readonly Locus[];
}

/** What is taken to be true of the two mutations. */
export type Assumption = 'as named' | 'same mutation' | 'two mutations' | 'two mutations, one on the X';

export interface MixingAdvice {
  /**
   * `breeds true`: no fliers come of it. `fliers`: they do. `depends`: only on a possibility.
   * `two species`: no hybrids, but one takes over.
   */
  verdict: 'breeds true' | 'fliers' | 'depends' | 'two species';
  /** What the cup becomes under each possibility, generation 1 first. */
  outlooks: { assumption: Assumption; wingedShare: number[] }[];
  why: Said;
  todo: Said[];
}

/** Problems: a locus that the table does not have. */
export function mixingAdvice(input: MixingInput): Result<MixingAdvice> {
  const { first, second } = input;
  if (first.species !== second.species) return ok(twoSpecies(first, second));
  const outlooks: MixingAdvice['outlooks'] = [];
  for (const { assumption, pair, loci } of possibilities(input)) {
    const result = poured(pair, loci, input);
    if (!result.ok) return result;
    outlooks.push({ assumption, wingedShare: result.value.generations.map((row) => row.wingedShare) });
  }
  const worst = (outlook: { wingedShare: number[] }) => Math.max(...outlook.wingedShare);
  const fly = outlooks.filter((outlook) => worst(outlook) > 0).length;
  const verdict = fly === 0 ? 'breeds true' : fly === outlooks.length ? 'fliers' : 'depends';
  return ok({ verdict, outlooks, ...wording(verdict, input, Math.max(...outlooks.map(worst))) });
}

interface Possibility {
  assumption: Assumption;
  /** Symbols of the two strains; null for wild. */
  pair: [string | null, string | null];
  loci: readonly Locus[];
}

function possibilities({ first, second, loci }: MixingInput): Possibility[] {
  const pair = [first, second].map(({ locus }) => (locus === 'wild' ? null : locus)) as Possibility['pair'];
  if (!pair.includes('unknown') || pair.includes(null))
    return [{ assumption: 'as named', ...withUnknowns(pair, loci, null) }];
  return [
    { assumption: 'same mutation', ...sameLocus(pair, loci) },
    { assumption: 'two mutations', ...withUnknowns(pair, loci, null) },
    { assumption: 'two mutations, one on the X', ...withUnknowns(pair, loci, 'X') },
  ];
}

function sameLocus(pair: Possibility['pair'], loci: readonly Locus[]) {
  const known = pair.find((symbol) => symbol !== 'unknown');
  if (known) return { pair: [known, known] as Possibility['pair'], loci };
  return { pair: ['unknown-1', 'unknown-1'] as Possibility['pair'], loci: [unknownRecessive('unknown-1')] };
}

/** Gives each unknown a locus of its own, the last of them on the chromosome asked for. */
function withUnknowns(pair: Possibility['pair'], loci: readonly Locus[], chromosome: 'X' | null) {
  const made: Locus[] = [];
  const named = pair.map((symbol, i) => {
    if (symbol !== 'unknown') return symbol;
    made.push(unknownRecessive(`unknown-${i + 1}`));
    return `unknown-${i + 1}`;
  });
  const last = made.at(-1);
  if (last) last.chromosome = chromosome;
  return { pair: named as Possibility['pair'], loci: [...loci, ...made] };
}

function poured(pair: Possibility['pair'], loci: readonly Locus[], { firstShare = 0.5, generations }: MixingInput) {
  const parts = pair.map((symbol, i) => ({
    ...pureFlies(symbol, loci),
    share: i === 0 ? firstShare : 1 - firstShare,
  }));
  return mixture({ parts, generations, loci });
}

/** The two sexes of a strain that breeds as true as its mutation allows. */
function pureFlies(symbol: string | null, loci: readonly Locus[]): { female: string; male: string } {
  if (symbol === null) return { female: '+/+', male: '+/+' };
  const locus = loci.find((one) => one.symbol === symbol);
  const pure = locus?.lethalHomozygous ? `${symbol}/+` : `${symbol}/${symbol}`;
  return { female: pure, male: locus?.chromosome === 'X' ? `${symbol}/Y` : pure };
}

function wording(verdict: MixingAdvice['verdict'], { first, second }: MixingInput, worst: number) {
  if (verdict === 'breeds true')
    return {
      why: said`${first.strain} and ${second.strain} carry the same mutation: their offspring cannot fly.`,
      todo: [said`Mixing is safe for flight; note both parents.`],
    };
  if (verdict === 'fliers')
    return {
      why: said`Each of ${first.strain} and ${second.strain} has the wild form of what the other lacks, so their offspring fly: up to ${percentSaid(worst)} of the cup.`,
      todo: [
        said`Keep them in separate cups.`,
        said`If it has happened: throw the cup out and start again from a pure one.`,
      ],
    };
  return {
    why: said`Nobody knows whether ${first.strain} and ${second.strain} carry the same mutation. If they do not, up to ${percentSaid(worst)} of the cup will fly.`,
    todo: [
      said`Keep them in separate cups.`,
      said`To find out, put a few virgin females of one with males of the other in a cup of their own: any winged offspring means two mutations.`,
    ],
  };
}

function twoSpecies(first: StrainToMix, second: StrainToMix): MixingAdvice {
  return {
    verdict: 'two species',
    outlooks: [],
    why: said`${first.species} and ${second.species} do not cross, so no fliers come of it, but the one that breeds faster takes over the cup.`,
    todo: [
      said`Keep them in separate cups.`,
      said`If it has happened, start new cups from flies sorted by eye, and sort again a generation later.`,
    ],
  };
}
