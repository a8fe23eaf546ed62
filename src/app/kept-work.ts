/**
 * Work that is kept between questions: each cup's table of evidence, and the policy tuned for a
 * household on a day. It changes no answer, only when it comes; it may be thrown away at any time.
 */
import { mix32 } from '../foundation/index.ts';
import type { KeptTable } from '../learning/index.ts';
import type { Facts } from '../logbook/index.ts';
import { tunePolicy } from '../planner/index.ts';
import { keptTables } from './evidence.ts';
import { cupMoves, type Moved, withMoves } from './moves/cup-moves.ts';
import type { Situation } from './planning-problem.ts';
import type { Question } from './question.ts';

/** Plain data, so that a shell can write it to a file and read it back. */
export interface KeptWork {
  tables: KeptTable[];
  policies: [string, Moved][];
}

const mostPolicies = 12;
const policies = new Map<string, Moved>();
let changes = 0;

/** Grows whenever there is something new to keep. */
export function keptWorkChanges(): number {
  return changes + keptTables.changes;
}

export function keptWork(): KeptWork {
  return { tables: keptTables.snapshot(), policies: [...policies] };
}

/** Takes up work kept by the same build; of another build it must not be given. */
export function recallWork(kept: KeptWork): void {
  keptTables.restore(kept.tables);
  for (const [key, policy] of kept.policies) policies.set(key, policy);
}

/** What is settled for a household on a day: the policy, and the cups that are carried elsewhere today. */
export interface Settled extends Moved {
  /** The household with these cups carried: what plan and forecast are made for. */
  at: Situation;
}

/** Tuned and searched for once for a log, day, seed and horizon. */
export function settled(at: Situation, question: Question): Settled {
  const key = `${fingerprint(at.model.facts)} ${question.on} ${question.seed} ${at.problem.days}`;
  let known = policies.get(key);
  if (!known) {
    known = cupMoves(at, tunePolicy(at.problem));
    policies.set(key, known);
    changes++;
    const oldest = policies.keys().next().value;
    if (policies.size > mostPolicies && oldest !== undefined) policies.delete(oldest);
  }
  return { ...known, at: withMoves(at, known.moves) };
}

/** 96 bits of the facts' text: two logs that differ do not meet by accident. */
function fingerprint(facts: Facts): string {
  const text = JSON.stringify(facts);
  let [a, b, c] = [1, 2, 3];
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    a = mix32(a, code);
    b = Math.imul(b ^ code, 0x01000193);
    c = Math.imul(c + code, 0x9e3779b1) ^ (c >>> 15);
  }
  return [a, b, c].map((x) => (x >>> 0).toString(16)).join('-');
}
