/**
 * What a household lets expect of a cup of which nothing was seen, draw by draw. Cups of the same recipe,
 * place, generation and founders share it: of a holding of thousands there are few kinds.
 */
import { type Design, fitted } from './design.ts';
import type { PaceAndYield } from './off-course.ts';

interface Kind {
  /** A cup of the kind. */
  cup: number;
  draws: PaceAndYield;
}

export class OrdinaryDraws {
  private readonly kinds = new Map<string, Kind>();

  constructor(
    private readonly pace: Design,
    private readonly yields: Design,
    private readonly draws: number,
  ) {}

  /** The draws of cup `i`, which later calls of `keep` fill. */
  of(i: number): PaceAndYield {
    const key = `${rowOf(this.pace, i)} ${rowOf(this.yields, i)}`;
    const known = this.kinds.get(key);
    if (known) return known.draws;
    const draws = { logPace: new Float64Array(this.draws), logYield: new Float64Array(this.draws) };
    this.kinds.set(key, { cup: i, draws });
    return draws;
  }

  /** Takes scenario `s` from the household's coefficients. */
  keep(s: number, paceCoefficients: Float64Array, yieldCoefficients: Float64Array): void {
    for (const { cup, draws } of this.kinds.values()) {
      draws.logPace[s] = fitted(this.pace, cup, paceCoefficients);
      draws.logYield[s] = fitted(this.yields, cup, yieldCoefficients);
    }
  }
}

function rowOf({ rows, columns }: Design, i: number): string {
  return rows.subarray(i * columns, (i + 1) * columns).join();
}
