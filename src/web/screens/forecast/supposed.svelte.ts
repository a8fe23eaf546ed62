/**
 * A forecast of a household that is a little different: warmer, or with more mouths. While a slider moves
 * the answer comes from few worlds, at once; when it rests, the same is asked of many. What is asked while
 * the worker is busy waits, and only the latest is asked.
 */
import type { ForecastAnswer, Supposition } from '../../../app/index.ts';
import { book, seed } from '../../state/book.svelte.ts';
import { Stopped } from '../../workers/worker-client.ts';

/** As many as are worked out between two pictures that the eye takes for one movement. */
const worldsWhileMoving = 60;
const worldsAtRest = 1000;
const restMs = 300;
/** Warmths that the slider can take, nearest first. */
export const warmths = [0, 0.5, -0.5, 1, -1, 1.5, -1.5, 2, -2, 2.5, -2.5, 3, -3, 3.5, -3.5, 4, -4];

const state = $state<{ answer: ForecastAnswer | null; isRough: boolean }>({ answer: null, isRough: false });
let latest: Supposition | null = null;
let isAsking = false;
let resting: ReturnType<typeof setTimeout> | undefined;
let moves = 0;

export function supposed(): ForecastAnswer | null {
  return state.answer;
}

/** True while the answer shown comes from few worlds. */
export function isRough(): boolean {
  return state.isRough;
}

export function dropSupposition(): void {
  clearTimeout(resting);
  moves += 1;
  latest = null;
  state.answer = null;
}

export async function suppose(supposition: Supposition): Promise<void> {
  moves += 1;
  latest = supposition;
  clearTimeout(resting);
  resting = setTimeout(() => void refine(supposition, moves), restMs);
  if (isAsking) return;
  isAsking = true;
  try {
    while (latest) {
      const now: Supposition = latest;
      latest = null;
      const move = moves;
      const answer = await book.quick.ask('whatIf', { on: book.on, seed, scenarios: worldsWhileMoving, ...now });
      if (move === moves || latest) show(now, answer, true);
    }
  } catch (error) {
    dropIfOvertaken(error);
  } finally {
    isAsking = false;
  }
}

/** Spends the worker's free time on what the slider may ask next; a move comes between two of them. True when done. */
export async function prepareSuppositions(isWanted: () => boolean): Promise<boolean> {
  try {
    for (const warmerC of warmths) {
      if (!isWanted()) return false;
      await book.quick.ask('prepareWhatIf', { on: book.on, seed, warmerC });
    }
    return true;
  } catch (error) {
    dropIfOvertaken(error);
    return false;
  }
}

async function refine(supposition: Supposition, move: number): Promise<void> {
  try {
    const answer = await book.slow.ask('whatIf', { on: book.on, seed, scenarios: worldsAtRest, ...supposition });
    if (move === moves) show(supposition, answer, false);
  } catch (error) {
    dropIfOvertaken(error);
  }
}

function show({ warmerC, needFactor }: Supposition, answer: ForecastAnswer, rough: boolean): void {
  const isAsItIs = warmerC === 0 && needFactor === 1;
  state.answer = isAsItIs ? null : answer;
  state.isRough = rough;
}

/** The logbook changed meanwhile: the what-if of before says nothing any more. */
function dropIfOvertaken(error: unknown): void {
  if (!(error instanceof Stopped)) throw error;
  state.answer = null;
}
