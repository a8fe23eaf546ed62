/** The solver that a shell has loaded, as the planner asks it. */
import type { Highs } from 'highs';
import type { Solve } from '../../planner/index.ts';

/** Branches after which a program of whole cups is left with the bound that it has by then. */
const mostNodes = 100;
const relativeGap = 1e-4;

/** Stops by branches, never by the clock, so that the same question has the same answer. */
export function solverOf(highs: Highs): Solve {
  return (text) =>
    highs.withModel({ format: 'lp', data: text }, (model) => {
      model.options.set({ output_flag: false, mip_max_nodes: mostNodes, mip_rel_gap: relativeGap });
      model.run();
      const status = model.getModelStatus();
      const { infeasible, unboundedOrInfeasible } = highs.constants.modelStatus;
      if (status === infeasible || status === unboundedOrInfeasible)
        return { bound: Number.POSITIVE_INFINITY, found: null };
      const objective = model.getObjectiveValue();
      const hasSolution = Number.isFinite(objective) && Math.abs(objective) < highs.infinity;
      const bound = text.includes('\nGenerals\n') ? Number(model.info.get('mip_dual_bound')) : objective;
      return { bound, found: hasSolution ? objective : null };
    });
}
