/** Why a log does not fit, in words. */
import { type Said, said } from '../foundation/index.ts';
import type { Misfit } from './evidence.ts';

const sentences: Record<Misfit['what'], Said> = {
  scatter: said`notes stray further than any band`,
  shape: said`flies come at other ages than the curve of the books says`,
  runs: said`what one note missed, the next ones miss too`,
  stages: said`no one pace explains larvae, pupae and flies`,
  drift: said`cups give more and more, or less and less, as time goes by`,
  'wrong notes': said`too many notes contradict the rest`,
};

export function misfitSaid(what: Misfit['what']): Said {
  return sentences[what];
}
