/**
 * Uncapacitated lot sizing (Wagner and Whitin 1958, Manag. Sci. 5:89): known demand by period, a set-up
 * cost by period, a holding cost a unit and period. The planner's limiting case when nothing is
 * uncertain, flies neither die nor found, and a cup's size is free; kept as a check of both solvers.
 */

export interface LotSizing {
  demand: number[];
  setUpCost: number[];
  holdingCost: number;
}

/** Least total cost, by dynamic programming over the period of the last set-up. */
export function leastLotCost({ demand, setUpCost, holdingCost }: LotSizing): number {
  const best = [0];
  for (let end = 1; end <= demand.length; end++) {
    let least = Number.POSITIVE_INFINITY;
    let holding = 0;
    let carried = 0;
    for (let start = end; start >= 1; start--) {
      holding += holdingCost * carried;
      carried += demand[start - 1] as number;
      least = Math.min(least, (best[start - 1] as number) + (setUpCost[start - 1] as number) + holding);
    }
    best.push(least);
  }
  return best[demand.length] as number;
}

/**
 * The same problem as a CPLEX-LP model in the facility-location form, whose relaxation is tight: flows
 * x_i_j from set-up i to period j, each at most its demand when set up.
 */
export function lotSizingModel({ demand, setUpCost, holdingCost }: LotSizing, relaxed: boolean): string {
  const objective: string[] = [];
  const rows: string[] = [];
  const flows: string[] = [];
  const setUps: string[] = [];
  demand.forEach((wanted, j) => {
    const sources: string[] = [];
    for (let i = 0; i <= j; i++) {
      objective.push(`${holdingCost * (j - i)} x_${i}_${j}`);
      rows.push(`l_${i}_${j}: x_${i}_${j} - ${wanted} y_${i} <= 0`);
      sources.push(`x_${i}_${j}`);
      flows.push(`x_${i}_${j}`);
    }
    rows.push(`d_${j}: ${sources.join(' + ')} = ${wanted}`);
    objective.push(`${setUpCost[j]} y_${j}`);
    setUps.push(`y_${j}`);
  });
  const bounds = setUps.map((y) => ` 0 <= ${y} <= 1`);
  const kinds = relaxed ? '' : `Binary\n ${setUps.join(' ')}\n`;
  return `Minimize\n obj: ${objective.join(' + ')}\nSubject To\n ${rows.join('\n ')}\nBounds\n${bounds.join('\n')}\n${kinds}End\n`;
}
