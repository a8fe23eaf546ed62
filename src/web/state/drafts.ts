/** What was typed into forms and not written yet, by the form's name: it outlives reload and crash. */
import { remember, remembered } from './device-memory.ts';

type Drafts = Record<string, unknown>;

const key = 'flylarder drafts';
/** Forms that were left long ago make room for those that are in hand. */
export const mostDrafts = 30;

export function keptDraft<Values>(name: string): Values | null {
  return (drafts()[name] as Values | undefined) ?? null;
}

export function keepDraft(name: string, values: unknown): void {
  const { [name]: _, ...others } = drafts();
  const newest = Object.entries(others).slice(-(mostDrafts - 1));
  remember(key, JSON.stringify({ ...Object.fromEntries(newest), [name]: values }));
}

export function forgetDraft(name: string): void {
  const { [name]: dropped, ...others } = drafts();
  if (dropped !== undefined) remember(key, JSON.stringify(others));
}

function drafts(): Drafts {
  try {
    return JSON.parse(remembered(key) ?? '{}') as Drafts;
  } catch {
    return {};
  }
}
