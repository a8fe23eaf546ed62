/** Checks of amounts that a person typed: refused with the place and what would be right. */
import { failed, ok, type Problem, type Result } from '../foundation/index.ts';

/** `value`, if it is a number of 0 or more. */
export function amountOf(value: number, where: string): Result<number> {
  return Number.isFinite(value) && value >= 0
    ? ok(value)
    : failed({ where, found: String(value), expected: 'a number, 0 or more' });
}

/** `value`, if it is a number above 0. */
export function positiveAmount(value: number, where: string): Result<number> {
  return Number.isFinite(value) && value > 0
    ? ok(value)
    : failed({ where, found: String(value), expected: 'a number above 0' });
}

/** `value`, if it is a share from 0 to below 1. */
export function shareBelowOne(value: number, where: string): Result<number> {
  return value >= 0 && value < 1
    ? ok(value)
    : failed({ where, found: String(value), expected: 'a share from 0 to below 1, for example 0.05' });
}

/** The problems of all failed results, in order. */
export function problemsOf(...results: Result<unknown>[]): Problem[] {
  return results.flatMap((result) => (result.ok ? [] : result.problems));
}
