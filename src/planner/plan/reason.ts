/** Why a job is there: a code, and the numbers that its sentence tells. Days count from today. */
export interface Reason {
  code: ReasonCode;
  values: Record<string, number | string>;
}

export type ReasonCode =
  | 'cover-need'
  | 'cover-need-and-founders'
  | 'keep-founders'
  | 'keep-backup'
  | 'bridge-gap'
  | 'bridge-first'
  | 'first-founders'
  | 'restart-founders'
  | 'feed-oldest-first'
  | 'feed-at-best'
  | 'feed-short'
  | 'past-its-time';
