/** How HTTP says what is wrong: `{ problems: [{ where, found, expected }] }`, never the body it was sent. */
import { z } from '@hono/zod-openapi';
import type { Context } from 'hono';
import type { ZodError } from 'zod';
import type { Problem } from '../foundation/index.ts';

export const problemAnswer = z
  .object({ problems: z.array(z.object({ where: z.string(), found: z.string(), expected: z.string() })) })
  .openapi('Problems');

export type ProblemStatus = 400 | 403 | 404 | 405 | 409 | 413 | 415 | 500 | 503;

export function problemResponse(context: Context, status: ProblemStatus, problems: Problem[]): Response {
  return context.json({ problems }, status);
}

/** The responses that a route declares beside its good one. */
export const problemResponses = {
  400: {
    description: 'The request is wrong; nothing was written',
    content: { 'application/json': { schema: problemAnswer } },
  },
} as const;

/** Each issue of a failed check as a problem; `where` begins with the part of the request. */
export function problemsOf(error: ZodError, part: string): Problem[] {
  return error.issues.map((issue) => ({
    where: [part, ...issue.path.map(String)].join('.'),
    found: 'input' in issue && issue.input !== undefined ? excerpt(issue.input) : 'a value that does not fit',
    expected: issue.message,
  }));
}

function excerpt(value: unknown): string {
  const text = typeof value === 'string' ? `"${value}"` : (JSON.stringify(value) ?? String(value));
  return text.length > 60 ? `${text.slice(0, 60)}...` : text;
}

/** The hook that the API's router calls after each check of a request. */
export function refuseBadInput(
  result: { success: true } | { success: false; error: unknown; target: string },
  context: Context,
): Response | undefined {
  if (result.success) return undefined;
  return problemResponse(context, 400, problemsOf(result.error as ZodError, result.target));
}
