/** Cups by key or label, as a person names them. */
import { failed, ok, type Problem, type Result } from '../../foundation/index.ts';
import type { CultureFacts, Facts } from '../../logbook/index.ts';

/** The named cups in the order named; without names all living ones, oldest first. Refused when a name fits none. */
export function chosenCups(facts: Facts, names: readonly string[] | undefined): Result<CultureFacts[]> {
  const living = facts.cultures.filter((c) => c.ended === null);
  if (names === undefined || names.length === 0) {
    if (living.length > 0) return ok(living);
    return failed({ where: 'cultures', found: 'no living cup', expected: 'at least one' });
  }
  const problems: Problem[] = [];
  const cups = names.flatMap((name) => {
    // A label may be used again after a cup has ended: the living one is meant, else the latest.
    const named = facts.cultures.filter((c) => c.culture === name || c.label === name);
    const cup = named.find((c) => c.ended === null) ?? named.at(-1);
    if (!cup) problems.push({ where: 'cultures', found: `"${name}"`, expected: `a cup such as ${exampleOf(living)}` });
    return cup ? [cup] : [];
  });
  return problems.length > 0 ? failed(...problems) : ok(cups);
}

function exampleOf(living: readonly CultureFacts[]): string {
  const labels = living.slice(0, 8).map((c) => c.label);
  return labels.length > 0 ? labels.join(', ') : 'one that was recorded';
}
