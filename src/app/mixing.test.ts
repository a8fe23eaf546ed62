import { describe, expect, it } from 'vitest';
import { day, problemText, type Result } from '../foundation/index.ts';
import { type Entry, fold } from '../logbook/index.ts';
import { flyPot } from './fly-pot.ts';
import { type CleanLineQuestion, cleanLine, mixing } from './mixing.ts';

const on = day('2026-11-25');
const entry = (fields: object, i: number) => ({
  on,
  ...fields,
  id: `0190a000-0000-7000-8000-${String(i).padStart(12, '0')}`,
  recordedAt: '2026-11-25T20:00:00Z',
  by: 'test',
});
const facts = fold(
  [
    { kind: 'strain', strain: 'stubs', base: 'melanogaster', mutation: 'vg' },
    { kind: 'strain', strain: 'bare', base: 'melanogaster', mutation: 'ap' },
    { kind: 'strain', strain: 'odd', base: 'melanogaster', mutation: 'zz' },
    { kind: 'strain', strain: 'big', base: 'hydei' },
  ].map(entry) as unknown as Entry[],
);
const wrong = (result: Result<unknown>) => (result.ok ? 'accepted' : result.problems.map(problemText).join('\n'));

describe('mixing two strains of the household', () => {
  it('is answered from their mutations', () => {
    const answer = mixing(facts, { first: 'stubs', second: 'bare' });
    expect(answer.ok && answer.value.verdict).toBe('fliers');
    expect(answer.ok && answer.value.outlooks[0]?.wingedShare).toHaveLength(6);
    const species = mixing(facts, { first: 'stubs', second: 'big' });
    expect(species.ok && species.value.verdict).toBe('two species');
  });
  it('names strains and mutations that are not there', () => {
    expect(wrong(mixing(facts, { first: 'x', second: 'y' }))).toMatch(/first: found x.*\n.*second: found y/);
    expect(wrong(mixing(facts, { first: 'stubs', second: 'odd' }))).toMatch(/unknown locus zz/);
    expect(wrong(mixing(facts, { first: 'stubs', second: 'bare', generations: 0 }))).toMatch(/generations/);
  });
});

describe('is the line clean?', () => {
  const question: CleanLineQuestion = { looks: [100, 100], founders: 50, foundersAre: 'flightless mated' };
  it('grows surer with each look', () => {
    const answer = cleanLine(question);
    expect(answer.ok && answer.value.afterLook[1]).toBeGreaterThan((answer.ok && answer.value.afterLook[0]) || 1);
    expect(answer.ok && answer.value.wingedShareBelow).toBeCloseTo(0.0295, 4);
  });
  it('refuses what cannot be', () => {
    expect(wrong(cleanLine({ ...question, looks: [] }))).toMatch(/0 looks/);
    expect(wrong(cleanLine({ ...question, looks: [1.5] }))).toMatch(/looks: found 1.5/);
    expect(wrong(cleanLine({ ...question, founders: 1 }))).toMatch(/founders: found 1/);
    expect(wrong(cleanLine({ ...question, priorContaminated: 2 }))).toMatch(/priorContaminated: found 2/);
  });
});

describe('a pot of flies', () => {
  const pot = { on, strain: 'stubs', fullMg: 30_400, emptyMg: 30_000, scaleStepMg: 10 };
  it('400 mg are some 400 to 900 flies, and what one weighs is the doubt', () => {
    const answer = flyPot(facts, pot);
    if (!answer.ok) throw new Error(wrong(answer));
    expect(answer.value.flies).toBeGreaterThan(400);
    expect(answer.value.flies).toBeLessThan(900);
    expect(answer.value.band.p05).toBeLessThan(answer.value.flies);
    expect(answer.value.mainDoubt).toBe('the mean mass of a fly');
  });
  it('a coarse scale is the doubt with few flies', () => {
    const answer = flyPot(facts, { ...pot, fullMg: 30_010, scaleStepMg: 100 });
    expect(answer.ok && answer.value.mainDoubt).toBe('the scale');
  });
  it('refuses pots that lose by filling', () => {
    expect(wrong(flyPot(facts, { ...pot, fullMg: 10 }))).toMatch(/fullMg: found 10/);
    expect(wrong(flyPot(facts, { ...pot, strain: 'x' }))).toMatch(/strain: found x/);
    expect(wrong(flyPot(facts, { ...pot, scaleStepMg: 0 }))).toMatch(/scaleStepMg: found 0/);
  });
});
