/**
 * The habit that the planner is measured against: the same number of cups on fixed weekdays, whatever
 * is seen. Founders, feeding and bridging purchases follow the same rules; a cup that found no founders
 * is carried to the next session.
 */
import type { Policy } from './household-world.ts';

export interface Habit {
  /** Days modulo 7, counted from today (0 = today's weekday), in order. */
  weekdays: number[];
  /** Cups of each strain on each of those days: `cups[strain][which day]`. */
  cups: number[][];
}

/** The habit as a policy; `bridge` decides purchases. */
export function habitPolicy(habit: Habit, bridge: Policy): Policy {
  const carried = habit.cups.map(() => 0);
  return {
    start(hw, t) {
      const at = habit.weekdays.indexOf(t % 7);
      for (let k = 0; k < carried.length; k++) {
        hw.wantedCups[k] = at < 0 ? 0 : (habit.cups[k]?.[at] ?? 0) + (carried[k] as number);
      }
    },
    afterSession(hw, t) {
      if (!habit.weekdays.includes(t % 7)) return;
      for (let k = 0; k < carried.length; k++) {
        carried[k] = Math.min(
          (hw.wantedCups[k] as number) - (hw.startedCups[k] as number),
          2 * Math.max(...(habit.cups[k] ?? [0])),
        );
      }
    },
    beginWorld() {
      carried.fill(0);
    },
    buy: bridge.buy,
  };
}
