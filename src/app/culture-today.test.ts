import { describe, expect, it } from 'vitest';
import { addDays, day } from '../foundation/index.ts';
import { factsWritten } from '../../tests/fixtures/facts-written.ts';
import { today } from './today.ts';

const on = day('2026-11-25');

function stageAt(strain: string, temperatureC: number, ageDays: number): string | undefined {
  const started = addDays(on, -ageDays);
  const facts = factsWritten(
    [
      { kind: 'place', place: 'shelf', temperatureC, on: addDays(on, -80) },
      { kind: 'started', culture: 'A', strain, place: 'shelf', founders: 50, on: started },
    ],
    on,
  );
  return today(facts, { on, seed: 1 }).cultures[0]?.stage;
}

describe('the stage of a cup', () => {
  it('goes through its life in order, and is not at its best when its flies are nearly all out', () => {
    const order = ['eggs', 'larvae', 'pupae', 'emerging', 'peak', 'declining', 'spent'];
    const stages = Array.from({ length: 13 }, (_, i) => stageAt('hydei', 21, 4 * i + 3));
    const steps = stages.map((stage) => (stage === undefined ? order.length : order.indexOf(stage)));
    expect(steps).toEqual([...steps].sort((a, b) => a - b));
    expect(stages).toContain('peak');
    expect(stageAt('hydei', 21, 48)).toBe('declining');
  });
});
