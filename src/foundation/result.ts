/**
 * A foreseeable failure is a value, not an exception: what went wrong is a list of problems that a
 * person can act on. A caller's own mistake throws RangeError instead.
 */

/** One thing that is wrong: where it is, what was found there, and what would be right. */
export interface Problem {
  /** The place: a file, a line, a field, an entry's id; the outermost first. */
  where: string;
  found: string;
  expected: string;
}

export type Result<T> = { ok: true; value: T } | { ok: false; problems: Problem[] };

export function ok<T>(value: T): Result<T> {
  return { ok: true, value };
}

export function failed<T = never>(...problems: Problem[]): Result<T> {
  return { ok: false, problems };
}

/** The problem as one line of text: `place: found X; expected Y`. */
export function problemText(problem: Problem): string {
  return `${problem.where}: found ${problem.found}; expected ${problem.expected}`;
}
