/** The answers of the set-up, kept on the device while it lasts: a reload in the middle loses nothing. */
import type { Weekday } from '../../../foundation/index.ts';
import { forgetDraft, keepDraft, keptDraft } from '../../state/drafts.ts';

export interface DraftGroup {
  name: string;
  animal: string | null;
  count: number;
  flies: number;
  strain: 'melanogaster' | 'hydei';
  feedingWeekdays: Weekday[];
  canWaitDays: number;
  /** Days until they come; 0 = they are here. */
  inDays: number;
}

export interface DraftCups {
  strain: 'melanogaster' | 'hydei';
  count: number;
  ageDays: number;
  bought: boolean;
}

export interface SetUpDraft {
  step: number;
  groups: DraftGroup[];
  temperatureC: number;
  seasons: boolean;
  seasonsC: { winter: number; spring: number; summer: number; autumn: number };
  workWeekdays: Weekday[];
  container: string;
  cups: DraftCups[];
  serviceLevel: string;
}

const name = 'set-up';

export function beginning(): SetUpDraft {
  return {
    step: 0,
    groups: [],
    temperatureC: 22,
    seasons: false,
    seasonsC: { winter: 20, spring: 22, summer: 25, autumn: 21 },
    workWeekdays: ['wed', 'sun'],
    container: 'litre',
    cups: [],
    serviceLevel: '0.99',
  };
}

export function keptSetUp(): SetUpDraft {
  return { ...beginning(), ...keptDraft<Partial<SetUpDraft>>(name) };
}

export function keepSetUp(draft: SetUpDraft): void {
  keepDraft(name, draft);
}

export function forgetSetUp(): void {
  forgetDraft(name);
}
