/** What a household may be compared with: one change of it, and the short text that asks for one. */
import { z } from 'zod';
import {
  type Day,
  failed,
  ok,
  parseDay,
  type Problem,
  type Result,
  type Weekday,
  weekdays,
} from '../../foundation/index.ts';
import { isoDay } from '../answers.ts';

export const purchaseModes = ['none', 'bridge', 'any'] as const;

export const change = z.discriminatedUnion('change', [
  z.strictObject({ change: z.literal('animals'), factor: z.number().min(0.05).max(20) }),
  z.strictObject({ change: z.literal('warmer'), byC: z.number().min(-15).max(15) }),
  z.strictObject({ change: z.literal('away'), from: isoDay, until: isoDay }),
  z.strictObject({ change: z.literal('lost'), culture: z.string().max(200) }),
  z.strictObject({ change: z.literal('weekdays'), weekdays: z.array(z.enum(weekdays)).min(1).max(7) }),
  z.strictObject({ change: z.literal('cups'), factor: z.number().min(0.1).max(10) }),
  z.strictObject({ change: z.literal('service'), level: z.number().min(0.5).max(0.9999) }),
  z.strictObject({ change: z.literal('purchases'), mode: z.enum(purchaseModes) }),
]);

export type Change = z.infer<typeof change>;

/** How each change is written; `compare` takes several, parted by commas. */
export const changeForms = [
  'animals:1.25',
  'warmer:2',
  'cooler:2',
  'away:2026-12-05..2026-12-12',
  'lost:CUP',
  'weekdays:tue+sat',
  'cups:1.5',
  'service:0.999',
  'purchases:none',
] as const;

const mostChanges = 12;

/** The changes of a list such as `animals:1.25,warmer:2`, or what is wrong with it. */
export function parseChanges(text: string): Result<Change[]> {
  const parts = text
    .split(',')
    .map((part) => part.trim())
    .filter((part) => part !== '');
  if (parts.length > mostChanges) return failed(problemOf(`${parts.length} changes`, `at most ${mostChanges}`));
  const changes: Change[] = [];
  const problems: Problem[] = [];
  for (const part of parts) {
    const read = change.safeParse(draftOf(part));
    if (read.success) changes.push(read.data);
    else problems.push(problemOf(`"${part.slice(0, 60)}"`, `one of ${changeForms.join(', ')}`));
  }
  return problems.length > 0 ? failed(...problems) : ok(changes);
}

function problemOf(found: string, expected: string): Problem {
  return { where: 'what-if', found, expected };
}

/** What the text says, unchecked. */
function draftOf(part: string): unknown {
  const at = part.indexOf(':');
  const [name, value] = [part.slice(0, at), part.slice(at + 1)];
  const number = value.trim() === '' ? Number.NaN : Number(value);
  switch (name) {
    case 'animals':
    case 'cups':
      return { change: name, factor: number };
    case 'warmer':
      return { change: 'warmer', byC: number };
    case 'cooler':
      return { change: 'warmer', byC: -number };
    case 'away': {
      const [from, until] = value.split('..').map(dayOf);
      return { change: 'away', from, until };
    }
    case 'lost':
      return { change: 'lost', culture: value };
    case 'weekdays':
      return { change: 'weekdays', weekdays: value.split('+') as Weekday[] };
    case 'service':
      return { change: 'service', level: number };
    case 'purchases':
      return { change: 'purchases', mode: value };
    default:
      return null;
  }
}

function dayOf(text: string): Day | undefined {
  const read = parseDay(text);
  return read.ok ? read.value : undefined;
}
