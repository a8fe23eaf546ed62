/**
 * Bringing a line back: the dated steps after a winged stranger got in, or after two flightless strains
 * were mixed, with the chance that the result is clean. Dates come from the generation time given.
 */
import { type DayNumber, type Said, said } from '../foundation/index.ts';
import { cleanChance, fliesToLookAt } from './clean-chance.ts';
import { percentSaid } from './percent-said.ts';

/** Sons of a pair that are test-crossed. */
const testedSons = 10;

export interface RescueInput {
  onDay: DayNumber;
  /** Days from starting a cup until its offspring can be judged, at this temperature. */
  generationDays: number;
  /** See virgin-window.ts. */
  virginWindowHours: number;
  /** Virgin females and males that start each new cup. */
  founders: { females: number; males: number };
  /** Flies looked at in each of the two checks. */
  fliesLookedAt: number;
  /** Chance that a female taken for a virgin had mated; an assumption, 0.05 when not given. */
  matedAfterAllChance?: number;
}

export interface RescueStep {
  onDay: DayNumber;
  /** 0 for the spoiled cup's own flies, 1 for the offspring of those picked, and so on. */
  generation: number;
  act: Said;
  why: Said;
}

export interface RescuePlan {
  steps: RescueStep[];
  /** Chance of clean after each check in which nothing wrong was seen. */
  cleanAfterCheck: number[];
}

/**
 * The plan for a recessive flightless line that a winged fly got into: every fly that shows flightless is
 * pure in itself, so virgin flightless females with flightless males are a clean start unless one had mated.
 */
export function rescueFromStranger(input: RescueInput): RescuePlan {
  checkRescue('rescueFromStranger', input);
  const { onDay, founders, fliesLookedAt, matedAfterAllChance = 0.05 } = input;
  const hours = Math.floor(input.virginWindowHours);
  const { afterLook } = cleanChance({
    priorContaminated: 1 - (1 - matedAfterAllChance) ** founders.females,
    founders: founders.females + founders.males,
    wildAlleles: 1,
    looks: [fliesLookedAt, fliesLookedAt],
    foundersAre: 'any',
  });
  const check = (generation: number): RescueStep => ({
    onDay: onDay + generation * Math.ceil(input.generationDays),
    generation,
    act: said`Look at ${fliesLookedAt} flies of each new cup before you take founders from it. One that can fly: throw that cup out.`,
    why: said`With none seen, the chance that it is clean is ${percentSaid(afterLook[generation - 1] as number)}.`,
  });
  return {
    steps: [
      {
        onDay,
        generation: 0,
        act: said`Tap every adult out of the cup. Kill the winged ones.`,
        why: said`Females that are there may carry a winged male's sperm, for two weeks.`,
      },
      {
        onDay,
        generation: 0,
        act: said`Within ${hours} hours take the flightless females that have emerged since, with flightless males, ${founders.females} and ${founders.males} to a new cup. Repeat as long as the cup gives; then freeze it.`,
        why: said`Females do not mate in their first ${hours} hours at this temperature. A fly that cannot fly carries no wild form of a recessive.`,
      },
      check(1),
      check(2),
    ],
    cleanAfterCheck: afterLook,
  };
}

export interface UnmixInput extends RescueInput {
  /** Recombination between the two loci in females, 0 to 0.5; 0.5 when on different chromosomes. */
  recombination: number;
  /** Whether the two lie on one chromosome; then the males hand on no new combination. */
  sameChromosome: boolean;
  /** Chance wanted that at least one of the pairs is clean. */
  confidence: number;
}

export interface UnmixPlan extends RescuePlan {
  /** Chance that a pair of flies that look like the strain wanted carries nothing of the other. */
  cleanPairChance: number;
  /** Single pairs to set up. */
  pairs: number;
  /** Offspring of a test-cross to look at. */
  testOffspring: number;
}

/**
 * The plan after two flightless strains were mixed and their second generation has come: flies that look like
 * the strain wanted may carry the other's mutation unseen. Single pairs are set up, and each pair's
 * offspring are test-crossed to the other strain, pure: a flightless fly among theirs shows the carrier.
 */
export function unmix(input: UnmixInput): UnmixPlan {
  checkRescue('unmix', input);
  const { onDay, generationDays, confidence } = input;
  const cleanPairChance = cleanPair(input);
  const pairs = cleanPairChance >= 1 ? 1 : fliesToLookAt(cleanPairChance, confidence);
  const testOffspring = fliesToLookAt(0.5, 0.99);
  const later = (generation: number) => onDay + generation * Math.ceil(generationDays);
  const hours = Math.floor(input.virginWindowHours);
  const steps: RescueStep[] = [
    {
      onDay,
      generation: 0,
      act: said`Set up ${pairs} cups of one pair each: a virgin female, taken within ${hours} hours, and a male, both looking like the strain you want.`,
      why: said`Each pair is clean with chance ${percentSaid(cleanPairChance)}; of ${pairs}, one is with ${percentSaid(1 - (1 - cleanPairChance) ** pairs)}.`,
    },
    {
      onDay: later(1),
      generation: 1,
      act: said`Put ${testedSons} sons of each pair, singly, with virgin females of the other strain, pure (a test-cross).`,
      why: said`A son that carries the other mutation has half his offspring flightless.`,
    },
    {
      onDay: later(2),
      generation: 2,
      act: said`Look at ${testOffspring} offspring of each son. Keep the pairs none of whose sons gave a flightless fly.`,
      why: said`A carrier shows itself among ${testOffspring} offspring with chance ${percentSaid(1 - 0.5 ** testOffspring)}.`,
    },
  ];
  return { steps, pairs, cleanPairChance, testOffspring, cleanAfterCheck: [cleanAfterTests(cleanPairChance)] };
}

/**
 * On different chromosomes a third of such flies are free of the other mutation, so a pair is with 1/9.
 * On one chromosome only the mother's gamete can hold both, in a share r of those with the one wanted.
 */
function cleanPair({ recombination, sameChromosome }: UnmixInput): number {
  if (!(recombination >= 0 && recombination <= 0.5))
    throw new RangeError(`unmix: recombination ${recombination} is not from 0 to 0.5`);
  return (sameChromosome ? 1 - recombination : 1 / 3) ** 2;
}

/** Chance that a pair is clean when none of ten tested sons showed a carrier; at worst one parent carries. */
function cleanAfterTests(cleanPairChance: number): number {
  const missed = (0.5 + 0.5 * 0.5 ** fliesToLookAt(0.5, 0.99)) ** testedSons;
  return cleanPairChance / (cleanPairChance + (1 - cleanPairChance) * missed);
}

function checkRescue(
  caller: string,
  { generationDays, virginWindowHours: hours, founders, fliesLookedAt }: RescueInput,
) {
  const require = (fine: boolean, what: string) => {
    if (!fine) throw new RangeError(`${caller}: ${what}`);
  };
  require(generationDays > 0 && Number.isFinite(generationDays), `generationDays ${generationDays} is not above 0`);
  require(hours > 0, `virginWindowHours ${hours} is not above 0`);
  require(founders.females >= 1 && founders.males >= 1, 'founders are fewer than one of each sex');
  require(Number.isInteger(fliesLookedAt) && fliesLookedAt >= 1, `fliesLookedAt ${fliesLookedAt} is not 1 or more`);
}
