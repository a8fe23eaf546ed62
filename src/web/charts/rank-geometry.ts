/** Notes at their places in their forecasts, week by week: columns of dots, spread so that none hides another. */
import { dayIndex } from '../days/calendar.ts';

export interface RankedNote {
  madeOn: string;
  rank: number;
}

export interface RankDot {
  x: number;
  y: number;
  isOutside: boolean;
}

/** y of a place: 0 at the foot, 1 at the top. */
export function rankY(rank: number, height: number): number {
  return height - rank * height;
}

/** One dot a note; the weeks `days` stand evenly over `width` px, notes of a week side by side in order. */
export function rankDots(
  notes: readonly RankedNote[],
  days: readonly string[],
  width: number,
  height: number,
): RankDot[] {
  const column = width / Math.max(1, days.length);
  return days.flatMap((day, k) => {
    const mine = notes.filter((note) => dayIndex(note.madeOn) === dayIndex(day));
    return mine.map((note, i) => ({
      x: column * (k + (i + 1) / (mine.length + 1)),
      y: rankY(note.rank, height),
      isOutside: note.rank < 0.05 || note.rank > 0.95,
    }));
  });
}
