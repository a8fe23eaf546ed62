/** What is said about lines, not in any language yet. */
import { type Said, said } from '../../foundation/index.ts';
import type { Assumption } from '../../strains/index.ts';
import type { LinesAnswer, LineWarning } from './line-answer.ts';

export type SaidWarning = Omit<LineWarning, 'why' | 'todo' | 'outlooks' | 'steps'> & {
  why: Said;
  todo: Said[];
  outlooks: { assumption: Said; wingedShare: number[] }[];
  steps: (Omit<LineWarning['steps'][number], 'act' | 'why'> & { act: Said; why: Said })[];
};

type StrainLines = LinesAnswer['strains'][number];
type Advice = NonNullable<StrainLines['advice']>;

export type SaidLines = Omit<StrainLines, 'advice' | 'spread'> & {
  advice: (Omit<Advice, 'why'> & { why: Said }) | null;
  spread: Omit<StrainLines['spread'], 'why'> & { why: Said };
};

type Quarantine = LinesAnswer['quarantine'][number];

export type SaidQuarantine = Omit<Quarantine, 'steps'> & {
  steps: (Omit<Quarantine['steps'][number], 'act'> & { act: Said })[];
};

export const assumptionSaid: Record<Assumption, Said> = {
  'as named': said`as named`,
  'same mutation': said`the two carry the same mutation`,
  'two mutations': said`two different mutations, none on the X`,
  'two mutations, one on the X': said`two different mutations, an unknown one on the X`,
};

export const oneWildMale = said`one wild male among the founders, nothing done`;
