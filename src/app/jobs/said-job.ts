/** A job whose reason is not in any language yet. */
import type { Said } from '../../foundation/index.ts';
import type { Job } from '../answers.ts';

export type SaidJob = Omit<Job, 'why'> & { why: Said };
