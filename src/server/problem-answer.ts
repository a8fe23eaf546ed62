/** How HTTP says what is wrong: `{ problems: [{ where, found, expected }] }`, never the body it was sent. */
import { z } from '@hono/zod-openapi';
import type { Context } from 'hono';
import type { ZodError } from 'zod';
import type { Problem } from '../foundation/index.ts';

export const problemAnswer = z
  .object({ problems: z.array(z.object({ where: z.string(), found: z.string(), expected: z.string() })) })
  .openapi('Problems');

export type ProblemStatus = 400 | 401 | 403 | 404 | 405 | 409 | 413 | 415 | 429 | 500 | 503;

export function problemResponse(context: Context, status: ProblemStatus, problems: Problem[]): Response {
  return context.json({ problems }, status);
}

/** The responses that a route declares beside its good one. */
export const problemResponses = {
  400: {
    description: 'The request is wrong; nothing was written',
    content: { 'application/json': { schema: problemAnswer } },
  },
};

/** Of a route that writes. */
export const writeProblemResponses = {
  ...problemResponses,
  403: {
    description: 'The caller may not record this; nothing was written',
    content: { 'application/json': { schema: problemAnswer } },
  },
};

/** Each issue of a failed check as a problem; `where` begins with the part of the request, `value` is what it was. */
export function problemsOf(error: ZodError, part: string, value: unknown): Problem[] {
  return error.issues.map((issue) => ({
    where: [part, ...issue.path.map(String)].join('.'),
    found:
      issue.code === 'unrecognized_keys'
        ? `unknown: ${issue.keys.join(', ').slice(0, 100)}`
        : excerpt(value, issue.path),
    expected: expectedOf(issue, value),
  }));
}

/** The check's own words, or ours where it says nothing or the field is missing. */
function expectedOf(issue: ZodError['issues'][number], value: unknown): string {
  if (issue.code === 'unrecognized_keys') return 'only what the description names';
  if (issue.code === 'invalid_value') return issue.values.map(String).join(' or ');
  const isMissing = issue.code === 'invalid_type' && excerpt(value, issue.path) === 'nothing';
  return isMissing ? 'a value: /api/v1/openapi.json says which' : issue.message;
}

function excerpt(value: unknown, path: readonly PropertyKey[]): string {
  let at = value;
  for (const key of path) at = at === null || at === undefined ? undefined : (at as Record<PropertyKey, unknown>)[key];
  if (at === undefined) return 'nothing';
  const text = JSON.stringify(at) ?? String(at);
  return text.length > 60 ? `${text.slice(0, 60)}...` : text;
}

/** The hook that the API's router calls after each check of a request. */
export function refuseBadInput(
  result: { success: true } | { success: false; error: unknown; target: string },
  context: Context,
): Response | undefined {
  if (result.success) return undefined;
  const value = result.target === 'query' ? context.req.query() : undefined;
  return problemResponse(context, 400, problemsOf(result.error as ZodError, result.target, value));
}
