/**
 * Rations of one strain in one world. A ration that can't be given in full on its day is owed to the
 * animals that can wait, and given first when there are flies again; what is still owed when their
 * patience ends is missed. Founders spared for the next session are touched only for who can't wait.
 */
import { type PreparedStrain, rationIn } from '../forecast/prepared-household.ts';
import type { StrainWorld } from '../forecast/strain-world.ts';
import { feed } from '../forecast/taking-flies.ts';

export interface RationBook {
  /** Flies owed by class and by day of the ration, modulo the class's patience + 1. */
  owed: Float64Array[];
  /** Sum of all that is owed from before today. */
  owedFlies: number;
}

/** How a day's feeding went; written anew every day. */
export interface FedDay {
  /** Flies of today's rations. */
  needed: number;
  /** Flies fed today, rations of before included. */
  fed: number;
  /** Flies of today's rations that were not given today. */
  late: number;
  /** Flies that nobody can wait for any longer, in all and by class. */
  missed: number;
  missedByClass: Float64Array;
}

export function makeRationBook(prepared: PreparedStrain): RationBook {
  return { owed: prepared.classes.map(({ waitDays }) => new Float64Array(waitDays + 1)), owedFlies: 0 };
}

export function makeFedDay(prepared: PreparedStrain): FedDay {
  return { needed: 0, fed: 0, late: 0, missed: 0, missedByClass: new Float64Array(prepared.classes.length) };
}

export function clearRations(book: RationBook): void {
  for (const owed of book.owed) owed.fill(0);
  book.owedFlies = 0;
}

/**
 * Feeds the animals of a strain on day `t`: the rations of the world's scenario of need, or where there is none
 * every ration `needFactor` times as large as planned.
 */
export function giveRations(
  sw: StrainWorld,
  book: RationBook,
  t: number,
  needFactor: number,
  nextSession: number,
  into: FedDay,
): void {
  const { classes } = sw.prepared;
  const needed = classes.reduce((sum, one) => sum + rationIn(one, sw.world, needFactor, t), 0);
  into.needed = needed;
  into.late = into.missed = 0;
  for (let c = 0; c < classes.length; c++) into.missedByClass[c] = 0;
  const urgent = urgentFlies(sw, book, t, needFactor);
  into.fed = feed(sw, needed + book.owedFlies, nextSession, urgent);
  if (book.owedFlies > 0 || into.fed < needed) settleRations(sw, book, t, needFactor, into);
}

/** Flies for those whose patience ends today. */
function urgentFlies({ prepared, world }: StrainWorld, book: RationBook, t: number, needFactor: number): number {
  const { classes } = prepared;
  let flies = 0;
  for (let c = 0; c < classes.length; c++) {
    const one = classes[c] as PreparedStrain['classes'][number];
    const { waitDays } = one;
    if (waitDays === 0) flies += rationIn(one, world, needFactor, t);
    else if (book.owedFlies > 0 && t >= waitDays) flies += dueOn(book, c, t - waitDays, waitDays);
  }
  return flies;
}

function dueOn(book: RationBook, c: number, ration: number, waitDays: number): number {
  return (book.owed[c] as Float64Array)[ration % (waitDays + 1)] as number;
}

/** Shares out what was fed, soonest due first, and closes the rations whose time is over. */
function settleRations(
  { prepared, world }: StrainWorld,
  book: RationBook,
  t: number,
  needFactor: number,
  into: FedDay,
): void {
  const { classes, longestWait } = prepared;
  classes.forEach((one, c) => {
    (book.owed[c] as Float64Array)[t % (one.waitDays + 1)] = rationIn(one, world, needFactor, t);
  });
  let left = into.fed;
  for (let due = t; due <= t + longestWait; due++) {
    classes.forEach(({ waitDays }, c) => {
      const ration = due - waitDays;
      if (ration < 0 || ration > t) return;
      const owed = book.owed[c] as Float64Array;
      const at = ration % (waitDays + 1);
      const given = Math.min(left, owed[at] as number);
      owed[at] = (owed[at] as number) - given;
      left -= given;
    });
  }
  closeRations(prepared, book, t, into);
}

function closeRations({ classes }: PreparedStrain, book: RationBook, t: number, into: FedDay): void {
  book.owedFlies = 0;
  classes.forEach(({ waitDays }, c) => {
    const owed = book.owed[c] as Float64Array;
    into.late += owed[t % (waitDays + 1)] as number;
    if (t >= waitDays) {
      const at = (t - waitDays) % (waitDays + 1);
      into.missedByClass[c] = owed[at] as number;
      into.missed += owed[at] as number;
      owed[at] = 0;
    }
    for (const flies of owed) book.owedFlies += flies;
  });
}
