/** Medium for all cups that are started on a day, when no batch in stock is enough: one pot. */
import { type Day, said } from '../../foundation/index.ts';
import { usualContainer } from '../household-model.ts';
import type { Situation } from '../planning-problem.ts';
import { mediumLeftG } from '../plan/medium-left.ts';
import type { SaidJob } from './said-job.ts';

/** One mixing job for each day with starts whose medium is not there yet. */
export function mixJobs({ model }: { model: Pick<Situation['model'], 'facts'> }, starts: SaidJob[]): SaidJob[] {
  return [...new Set(starts.map((start) => start.date))].flatMap((date) => {
    const ofDay = starts.filter((start) => start.date === date);
    const wantedG = ofDay.reduce((sum, start) => sum + (start.cups ?? 0) * mediumOf(model.facts, start), 0);
    const missing = Math.round(wantedG - mediumLeftG(model.facts, date as Day));
    if (missing <= 0) return [];
    const cups = ofDay.reduce((sum, start) => sum + (start.cups ?? 0), 0);
    const sizes = cupsByMedium(model.facts, ofDay).map(([massG, cups]) => `${cups} × ${massG} g`);
    const why = said`${{ list: sizes }} are wanted and no batch has enough: mix about ${missing} g early enough to cool, covered.`;
    const firmness = ofDay.some((start) => start.firmness === 'firm') ? ('firm' as const) : ('expected' as const);
    return [{ id: `${date}:mix`, date, kind: 'mix' as const, strain: null, cups, why, firmness }];
  });
}

/** Cups by the medium of each, whatever strain they are for: they come out of one pot. */
function cupsByMedium(facts: Situation['model']['facts'], starts: SaidJob[]): [massG: number, cups: number][] {
  const cups = new Map<number, number>();
  for (const start of starts) {
    const massG = mediumOf(facts, start);
    cups.set(massG, (cups.get(massG) ?? 0) + (start.cups ?? 0));
  }
  return [...cups];
}

function mediumOf(facts: Situation['model']['facts'], start: SaidJob): number {
  return usualContainer(facts, start.strain ?? '').mediumMassG;
}
