/**
 * A forecast of a household that is a little different: warmer, or with more mouths. Each move of a
 * slider asks once; what is asked while the worker is busy waits, and only the latest is asked.
 */
import type { ForecastAnswer } from '../../../app/index.ts';
import { book, seed } from '../../state/book.svelte.ts';
import type { Supposition } from '../../workers/questions.ts';
import { Stopped } from '../../workers/worker-client.ts';

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
      const answer = await book.quick.ask('whatIf', { on: book.on, seed, scenarios: scenariosWhileDragging, ...now });
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

function unchanged({ warmerC, needFactor }: Supposition): boolean {
  return warmerC === 0 && needFactor === 1;
}
