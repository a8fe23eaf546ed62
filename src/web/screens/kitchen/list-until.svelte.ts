/** Until which day the shopping list should last: as chosen last, four weeks to begin with. */
import type { Day } from '../../../foundation/index.ts';
import { plusDays } from '../../days/calendar.ts';
import { book } from '../../state/book.svelte.ts';

const usualDays = 28;
const chosen = $state<{ until: Day | null }>({ until: null });

export function listUntil(): Day {
  return chosen.until !== null && chosen.until >= book.on ? chosen.until : plusDays(book.on, usualDays);
}

export function setListUntil(day: string): void {
  if (/^\d{4}-\d{2}-\d{2}$/.test(day)) chosen.until = day as Day;
}
