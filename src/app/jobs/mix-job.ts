/** Medium for the cups of a start, when no batch in stock is enough. */
import type { Job } from '../answers.ts';
import { usualContainer } from '../household-model.ts';
import type { Situation } from '../planning-problem.ts';

export function mixJob({ model }: Situation, start: Job): Job[] {
  const cups = start.cups ?? 0;
  const each = usualContainer(model.facts, start.strain ?? '').mediumMassG;
  const missing = Math.round(cups * each - mediumLeftG(model.facts, start.date));
  if (missing <= 0) return [];
  return [
    {
      id: `${start.date}:mix:${start.strain}`,
      date: start.date,
      kind: 'mix',
      strain: start.strain,
      cups,
      why: `${cups} × ${each} g are wanted and no batch has enough: mix about ${missing} g early enough to cool, covered.`,
      firmness: start.firmness,
    },
  ];
}

/** Medium of batches that still keep on the day, less what cups were filled from them, g. */
function mediumLeftG({ batches, cultures }: Situation['model']['facts'], date: string): number {
  const good = batches.filter((b) => b.goodUntil !== null && b.goodUntil >= date);
  return good.reduce((sum, batch) => {
    const used = cultures.filter((c) => c.batch === batch.batch).reduce((g, c) => g + c.mediumMassG, 0);
    return sum + Math.max(0, batch.massG - used);
  }, 0);
}
