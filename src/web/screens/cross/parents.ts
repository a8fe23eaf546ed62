/** Parents to pick from a list: flies by what can be seen of them, and the genotype that stands for each. */

type MutationSymbol = 'vg' | 'ap' | 'rsd' | 'fli' | 'Cy' | 'Ly' | 'u1' | 'u2' | 'xu';

interface Mutation {
  symbol: MutationSymbol;
  /** A male has one X only. */
  isOnX?: boolean;
  /** One copy grounds the fly, and two kill it. */
  isDominant?: boolean;
}

/** Those that ground a fly. */
const mutations: readonly Mutation[] = [
  { symbol: 'vg' },
  { symbol: 'ap' },
  { symbol: 'rsd' },
  { symbol: 'fli', isOnX: true },
  { symbol: 'Cy', isDominant: true },
  { symbol: 'Ly', isDominant: true },
  { symbol: 'u1' },
  { symbol: 'u2' },
  { symbol: 'xu', isOnX: true },
];

export const wild = '+/+';

export interface PickedParent {
  genotype: string;
  symbol: MutationSymbol;
}

/** Flies that cannot fly. */
export function grounded(sex: 'female' | 'male'): PickedParent[] {
  return mutations.map(({ symbol, isOnX, isDominant }) => {
    if (isDominant) return { symbol, genotype: `${symbol}/+` };
    return { symbol, genotype: isOnX && sex === 'male' ? `${symbol}/Y` : `${symbol}/${symbol}` };
  });
}

/** Flies that fly and hand on a mutation; a male shows what is on his X. */
export function carriers(sex: 'female' | 'male'): PickedParent[] {
  return mutations
    .filter(({ isOnX, isDominant }) => !isDominant && !(isOnX && sex === 'male'))
    .map(({ symbol }) => ({ symbol, genotype: `${symbol}/+` }));
}
