/** The one way by which a request's entries come into the logbook: what its sender may write, with their name. */
import type { Problem } from '../../foundation/index.ts';
import type { Entry } from '../../logbook/index.ts';
import type { AppendReport } from '../../store/store.ts';
import type { ApiContext } from '../api-context.ts';
import type { Place } from '../write-queue.ts';
import type { Caller } from './caller.ts';
import { roleProblem } from './role-rules.ts';
import { sentBy } from './sent-by.ts';

export type Appended = { ok: true; report: AppendReport } | { ok: false; status: 400 | 403; problems: Problem[] };

/** Writes all of them or none. */
export async function appendAs(
  context: ApiContext,
  caller: Caller,
  entries: readonly Entry[],
  where: Place,
): Promise<Appended> {
  const { household } = context;
  for (const entry of entries) {
    const refusal = await roleProblem(caller, entry, household.store);
    if (refusal) return { ok: false, status: 403, problems: [refusal] };
  }
  const kept = await sentBy(context, caller, entries, () => household.append(entries, where));
  return kept.ok ? { ok: true, report: kept.value } : { ok: false, status: 400, problems: kept.problems };
}
