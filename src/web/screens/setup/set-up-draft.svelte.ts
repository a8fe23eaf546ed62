/** The answers of the set-up, kept on the device while it lasts: a reload in the middle loses nothing. */
import type { Weekday } from '../../../foundation/index.ts';

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

const key = 'flylarder set-up';

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

export function keptDraft(): SetUpDraft {
  try {
    return { ...beginning(), ...(JSON.parse(localStorage.getItem(key) ?? '{}') as Partial<SetUpDraft>) };
  } catch {
    return beginning();
  }
}

export function keepDraft(draft: SetUpDraft): void {
  localStorage.setItem(key, JSON.stringify(draft));
}

export function forgetDraft(): void {
  localStorage.removeItem(key);
}
