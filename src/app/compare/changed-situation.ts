/** The household with one change from today on: what was learned of it until today stays as it is. */
import { type Day, failed, ok, type Result } from '../../foundation/index.ts';
import type { Facts } from '../../logbook/index.ts';
import type { PlanningProblem, PurchaseMode } from '../../planner/index.ts';
import { type HouseholdModel, usualContainer } from '../household-model.ts';
import { planningProblem, type Situation, warmerSituation } from '../planning-problem.ts';
import type { Change } from './change.ts';

export interface Changed {
  problem: PlanningProblem;
  purchases: PurchaseMode;
}

export function changedSituation(at: Situation, change: Change): Result<Changed> {
  const any = (problem: PlanningProblem) => ok({ problem, purchases: 'any' as const });
  const withFacts = (facts: Facts) => any(problemOf(at, { ...at.model, facts }));
  const { facts } = at.model;
  const { household } = facts;
  switch (change.change) {
    case 'animals':
      return any(withNeed(at.problem, change.factor));
    case 'warmer':
      return any(warmerSituation(at, change.byC, at.problem.days / 7).problem);
    case 'away':
      if (change.until < change.from)
        return failed({ where: 'away', found: `until ${change.until}`, expected: `a day from ${change.from} on` });
      return withFacts({
        ...facts,
        absences: [...facts.absences, { from: change.from as Day, until: change.until as Day, sitterFeeds: true }],
      });
    case 'lost':
      return lost(at, change.culture);
    case 'weekdays':
      return withFacts({ ...facts, household: { ...household, workWeekdays: change.weekdays } });
    case 'cups':
      return withFacts({ ...facts, containers: containersOf(facts).map((c) => scaled(c, change.factor)) });
    case 'service':
      return withFacts({ ...facts, household: { ...household, serviceLevel: change.level } });
    case 'purchases':
      return ok({ problem: at.problem, purchases: change.mode });
  }
}

function problemOf(at: Situation, model: HouseholdModel): PlanningProblem {
  return planningProblem(model, at.histories, at.beliefs, at.problem.seed, at.problem.days);
}

/** Every ration `factor` times as large, as with more animals of each kind; orders stay. */
export function withNeed(problem: PlanningProblem, factor: number): PlanningProblem {
  const times = (flies: Float64Array) => flies.map((n) => n * factor);
  const draws = (scenarios: readonly Float32Array[]) => scenarios.map((flies) => flies.map((n) => n * factor));
  const strains = problem.strains.map((strain) => ({
    ...strain,
    wantedFlies: times(strain.wantedFlies),
    ...(strain.needDraws && { needDraws: draws(strain.needDraws) }),
    groups: (strain.groups ?? []).map((group) => ({
      ...group,
      flies: times(group.flies),
      ...(group.draws && { draws: draws(group.draws) }),
    })),
  }));
  return { ...problem, strains };
}

/** The cup fails today. */
function lost(at: Situation, culture: string): Result<Changed> {
  const living = [...at.histories.values()].flat().filter((cup) => cup.end === null);
  const cup = living.find((c) => c.culture.culture === culture || c.culture.label === culture);
  if (!cup) {
    const labels = living.slice(0, 20).map((c) => c.culture.label);
    const expected = `a living cup: ${labels.join(', ') || 'there is none'}`;
    return failed({ where: 'lost', found: `"${culture.slice(0, 60)}"`, expected });
  }
  const strains = at.problem.strains.map((strain) => ({
    ...strain,
    existing: strain.existing.filter((one) => one.id !== cup.culture.culture),
  }));
  return ok({ problem: { ...at.problem, strains }, purchases: 'any' });
}

function containersOf(facts: Facts): Facts['containers'] {
  return facts.containers.length > 0 ? facts.containers : [usualContainer(facts, '')];
}

/** A larger cup has more of everything, founders too. */
function scaled(container: Facts['containers'][number], factor: number): Facts['containers'][number] {
  return {
    ...container,
    volumeMl: container.volumeMl * factor,
    mediumMassG: container.mediumMassG * factor,
    surfaceCm2: container.surfaceCm2 * factor ** (2 / 3),
    founders: Math.max(1, Math.round(container.founders * factor ** (2 / 3))),
  };
}

/** The cup whose loss would cost most: the one expected to give most flies in the coming weeks. */
export function dearestCup(at: Situation): string | null {
  let dearest: { id: string; flies: number } | null = null;
  for (const { existing } of at.problem.strains) {
    for (const cup of existing) {
      const ahead = cup.curve.emergedByAge.slice(cup.ageDays).reduce((sum, flies) => sum + flies, 0);
      if (!dearest || ahead > dearest.flies) dearest = { id: cup.id, flies: ahead };
    }
  }
  return dearest?.id ?? null;
}
