/** A strain's species and the mutation that keeps it from flying, as far as the log and the books say. */
import type { StrainFacts } from '../../logbook/index.ts';
import { strainLife } from '../../reference/index.ts';
import type { StrainToMix } from '../../strains/index.ts';

/** Published strains that are named after their mutation. */
const mutationOfBase: Record<string, string> = {
  'melanogaster-vestigial': 'vg',
  'melanogaster-apterous': 'ap',
};

/** The mutation written down, else the one that its published base is named after, else `unknown`. */
export function mutationOf({ mutation, base }: Pick<StrainFacts, 'mutation' | 'base'>): string {
  return mutation === 'unknown' ? (mutationOfBase[base] ?? mutation) : mutation;
}

/** Two bases of one species cross; a base that the books do not have is a species of its own. */
export function strainToMix(strain: StrainFacts): StrainToMix {
  return {
    strain: strain.name || strain.strain,
    species: strainLife(strain.base)?.species ?? strain.base,
    locus: mutationOf(strain),
  };
}
