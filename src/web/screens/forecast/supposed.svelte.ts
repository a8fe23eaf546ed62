/**
 * A forecast of a household that is a little different: warmer, or with more mouths. Each move of a
 * slider asks once; what is asked while the worker is busy waits, and only the latest is asked.
 */
import type { ForecastAnswer } from '../../../app/index.ts';
import type { EntryDraft, Facts } from '../../../logbook/index.ts';
import { book, seed } from '../../state/book.svelte.ts';
import { periodOn } from '../../state/groups.ts';
import { Stopped } from '../../workers/worker-client.ts';

export interface Supposition {
  warmerC: number;
  mouthsFactor: number;
}

/** Fewer worlds than the forecast itself, so that the answer comes while the finger moves. */
const scenariosWhileDragging = 200;

const state = $state<{ answer: ForecastAnswer | null }>({ answer: null });
let latest: Supposition | null = null;
let asking = false;

export function supposed(): ForecastAnswer | null {
  return state.answer;
}

export function dropSupposition(): void {
  latest = null;
  state.answer = null;
}

export async function suppose(supposition: Supposition): Promise<void> {
  latest = supposition;
  if (asking) return;
  asking = true;
  try {
    while (latest) {
      const now: Supposition = latest;
      latest = null;
      const supposing = book.facts ? draftsOf(now, book.facts) : [];
      const answer = await book.quick.ask('whatIf', {
        on: book.on,
        seed,
        scenarios: scenariosWhileDragging,
        supposing,
      });
      if (!unchanged(now) || latest) state.answer = answer;
      else state.answer = null;
    }
  } catch (error) {
    // The logbook changed meanwhile: the what-if of before says nothing any more.
    if (!(error instanceof Stopped)) throw error;
    state.answer = null;
  } finally {
    asking = false;
  }
}

function unchanged({ warmerC, mouthsFactor }: Supposition): boolean {
  return warmerC === 0 && mouthsFactor === 1;
}

/** The entries that would make it so, from today on. */
export function draftsOf({ warmerC, mouthsFactor }: Supposition, facts: Facts): EntryDraft[] {
  const on = book.on;
  const places: EntryDraft[] = facts.places.map((place) => ({
    kind: 'place',
    on,
    place: place.place,
    cupOffsetC: Math.max(-10, Math.min(10, place.cupOffsetC + warmerC)),
  }));
  const groups: EntryDraft[] = facts.groups.flatMap((group) => {
    const period = periodOn(group, on);
    if (!period) return [];
    const { count, strain, until } = period;
    const fliesPerFeeding = period.fliesPerFeeding * mouthsFactor;
    return [
      { kind: 'group', on, group: group.group, count, fliesPerFeeding, strain, ...(until && { until }) } as EntryDraft,
    ];
  });
  return [...(warmerC === 0 ? [] : places), ...(mouthsFactor === 1 ? [] : groups)];
}
