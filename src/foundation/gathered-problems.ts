/** The same mistake in many lines of a file, said once. */
import type { Problem } from './result.ts';

const lineNumber = /, line (\d+)/;

/**
 * Problems that differ only in their line become one, in the place of the first: `cups.csv, line 2 and 2999
 * more lines, strain`. Others are kept as they are, in their order.
 */
export function gatheredProblems(problems: readonly Problem[]): Problem[] {
  const alike = new Map<string, { first: Problem; lines: Set<string> }>();
  for (const problem of problems) {
    const line = lineNumber.exec(problem.where)?.[1] ?? '';
    const key = JSON.stringify([problem.where.replace(lineNumber, ', line'), problem.found, problem.expected]);
    const group = alike.get(key);
    if (group) group.lines.add(line);
    else alike.set(key, { first: problem, lines: new Set([line]) });
  }
  return [...alike.values()].map(({ first, lines }) =>
    lines.size === 1 ? first : { ...first, where: first.where.replace(lineNumber, `$& and ${more(lines.size - 1)}`) },
  );
}

function more(lines: number): string {
  return lines === 1 ? '1 more line' : `${lines} more lines`;
}
