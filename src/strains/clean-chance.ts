/**
 * How sure one can be that a recessive flightless line is clean of the wild allele, having looked at
 * flies and seen none winged. One autosomal locus, founders drawn by chance: the chances of 0 to 2N
 * wild alleles among the founders are carried from generation to generation and sifted by each look.
 */

export interface CleanChanceInput {
  /** Chance, before any look, that the wild allele is in the line at all. */
  priorContaminated: number;
  /** Founders of each generation, both sexes together. */
  founders: number;
  /** Wild alleles among the founders of generation 1 if it is contaminated: 1 for a carrier, 2 for a wild fly. */
  wildAlleles: number;
  /** Flies looked at in generation 1, 2, ..., all flightless. 0 = not looked. */
  looks: readonly number[];
  /** How founders are taken: at random, or flightless ones by eye as virgins or already mated. */
  foundersAre: 'any' | 'flightless virgins' | 'flightless mated';
}

export interface CleanChance {
  /** Chance of clean after each look. */
  afterLook: number[];
}

/**
 * Chance that the flies looked at last, and all that come of them, carry no wild allele, after each
 * look. Throws RangeError on values out of range (founders 1 to 500).
 */
export function cleanChance(input: CleanChanceInput): CleanChance {
  checkInput(input);
  const { priorContaminated, founders, wildAlleles, looks } = input;
  const copies = 2 * founders;
  let chances: Float64Array = new Float64Array(copies + 1);
  chances[0] = 1 - priorContaminated;
  chances[wildAlleles] = (chances[wildAlleles] as number) + priorContaminated;
  const afterLook = looks.map((flies, i) => {
    if (i > 0) chances = nextFounders(chances, input);
    chances = sifted(chances, flies, input);
    return chances[0] as number;
  });
  return { afterLook };
}

function checkInput({ priorContaminated, founders, wildAlleles, looks }: CleanChanceInput): void {
  const require = (fine: boolean, what: string) => {
    if (!fine) throw new RangeError(`cleanChance: ${what}`);
  };
  require(priorContaminated >= 0 && priorContaminated <= 1, `priorContaminated ${priorContaminated} is not 0 to 1`);
  require(Number.isInteger(founders) && founders >= 1 && founders <= 500, `founders ${founders} is not 1 to 500`);
  require(Number.isInteger(wildAlleles) &&
    wildAlleles >= 1 &&
    wildAlleles <= 2 * founders, `wildAlleles ${wildAlleles} is not 1 to ${2 * founders}`);
  for (const flies of looks) require(Number.isInteger(flies) && flies >= 0, `looks has ${flies}, not a whole number`);
}

/** Chances after seeing `flies` flies of which none was winged. */
function sifted(chances: Float64Array, flies: number, input: CleanChanceInput): Float64Array {
  const weighed = chances.map((chance, k) => chance * (1 - wingedShare(k, input)) ** flies);
  const sum = weighed.reduce((a, b) => a + b, 0);
  // All winged for certain and yet none seen: the belief was impossible; then only clean remains.
  return sum > 0 ? weighed.map((chance) => chance / sum) : chances.map((_, k) => (k === 0 ? 1 : 0));
}

/** Winged share of the offspring of founders with `k` wild alleles, mating at random. */
function wingedShare(k: number, { founders }: CleanChanceInput): number {
  return 1 - (1 - k / (2 * founders)) ** 2;
}

/** Chances for the next founders: a binomial draw of the gametes that can still be wild. */
function nextFounders(chances: Float64Array, { founders, foundersAre }: CleanChanceInput): Float64Array {
  // Flightless flies carry no wild allele; of mated ones only the sperm may.
  const draws = { any: 2 * founders, 'flightless mated': founders, 'flightless virgins': 0 }[foundersAre];
  const next = new Float64Array(chances.length);
  chances.forEach((chance, k) => {
    if (chance > 0) addBinomial(next, chance, draws, k / (2 * founders));
  });
  return next;
}

function addBinomial(into: Float64Array, weight: number, draws: number, p: number): void {
  if (p === 0 || p === 1) {
    const at = p * draws;
    into[at] = (into[at] as number) + weight;
    return;
  }
  // From the mode outwards, so that no term underflows before it is needed.
  const mode = Math.min(draws, Math.floor((draws + 1) * p));
  const terms = new Float64Array(draws + 1);
  terms[mode] = 1;
  for (let j = mode; j < draws; j++) terms[j + 1] = ((terms[j] as number) * (draws - j) * p) / ((j + 1) * (1 - p));
  for (let j = mode; j > 0; j--) terms[j - 1] = ((terms[j] as number) * j * (1 - p)) / ((draws - j + 1) * p);
  const sum = terms.reduce((a, b) => a + b, 0);
  terms.forEach((term, j) => {
    into[j] = (into[j] as number) + (weight * term) / sum;
  });
}

/**
 * Largest share that "none seen in `flies`" still allows at the given confidence: 1 - (1 - confidence)^(1/flies),
 * close to 3 / flies at 0.95 (the rule of three, source key hanley-1983).
 * @example noneSeenUpperShare(100, 0.95) // => 0.0295
 */
export function noneSeenUpperShare(flies: number, confidence = 0.95): number {
  if (!(Number.isInteger(flies) && flies >= 1))
    throw new RangeError(`noneSeenUpperShare: flies ${flies} is not 1 or more`);
  if (!(confidence > 0 && confidence < 1))
    throw new RangeError(`noneSeenUpperShare: confidence ${confidence} is not between 0 and 1`);
  return 1 - (1 - confidence) ** (1 / flies);
}

/**
 * Flies to look at so that a share of `share` would show at least one with chance `confidence`.
 * @example fliesToLookAt(0.5, 0.99) // => 7, the offspring of a test-cross
 */
export function fliesToLookAt(share: number, confidence: number): number {
  if (!(share > 0 && share <= 1)) throw new RangeError(`fliesToLookAt: share ${share} is not above 0 and up to 1`);
  if (!(confidence > 0 && confidence < 1))
    throw new RangeError(`fliesToLookAt: confidence ${confidence} is not between 0 and 1`);
  return share === 1 ? 1 : Math.ceil(Math.log(1 - confidence) / Math.log(1 - share));
}
