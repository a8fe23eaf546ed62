/** From the ledger's weeks to the places and lengths of its picture: four bands over one axis of weeks. */
import type { LedgerAnswer } from '../../app/index.ts';

export interface LedgerBand {
  /** Top and foot of the band, px. */
  top: number;
  foot: number;
  most: number;
}

export interface LedgerWeekDrawn {
  week: string;
  x: number;
  /** Heights in px above (taken) and below (thrown out) the middle line. */
  takenPx: number;
  wastedPx: number;
  costPx: number;
  /** y of the dots; null where nothing is known. */
  fliesPerCupY: number | null;
  mediumPerFlyY: number | null;
}

export interface LedgerDrawing {
  weekWidth: number;
  flies: LedgerBand;
  cost: LedgerBand;
  perCup: LedgerBand;
  perFly: LedgerBand;
  middle: number;
  height: number;
  weeks: LedgerWeekDrawn[];
}

const bandPx = 74;
const fliesPx = 150;
const gapPx = 34;
/** A week's medium per fly far above the rest says that hardly a fly was counted: it is drawn at the top. */
const outlierFactor = 4;

/** @param width of the drawing in px, labels beside it not counted. */
export function ledgerDrawing({ weeks, hasPrices }: LedgerAnswer, width: number): LedgerDrawing {
  const most = (values: number[]) => Math.max(1e-9, ...values);
  const flies: LedgerBand = band(
    20,
    fliesPx,
    most(weeks.map((w) => w.fliesTaken)) + most(weeks.map((w) => w.fliesWasted)),
  );
  const cost = band(flies.foot + gapPx, hasPrices ? bandPx : 0, most(weeks.map((w) => w.cost)));
  const perCup = band(
    cost.foot + (hasPrices ? gapPx : 0),
    bandPx,
    most(weeks.flatMap((w) => w.fliesPerEndedCup ?? [])),
  );
  const perFly = band(perCup.foot + gapPx, bandPx, mostUsual(weeks.flatMap((w) => w.mediumGPerFly ?? [])));
  const middle = flies.top + (fliesPx * most(weeks.map((w) => w.fliesTaken))) / flies.most;
  const weekWidth = width / Math.max(1, weeks.length);
  const at = ({ top, foot, most: scale }: LedgerBand, value: number | null) =>
    value === null ? null : foot - ((foot - top) * Math.min(value, scale)) / scale;
  return {
    weekWidth,
    flies,
    cost,
    perCup,
    perFly,
    middle,
    height: perFly.foot + 26,
    weeks: weeks.map((w, i) => ({
      week: w.week,
      x: (i + 0.5) * weekWidth,
      takenPx: (fliesPx * w.fliesTaken) / flies.most,
      wastedPx: (fliesPx * w.fliesWasted) / flies.most,
      costPx: hasPrices ? (bandPx * w.cost) / cost.most : 0,
      fliesPerCupY: at(perCup, w.fliesPerEndedCup),
      mediumPerFlyY: at(perFly, w.mediumGPerFly),
    })),
  };
}

function band(top: number, px: number, most: number): LedgerBand {
  return { top, foot: top + px, most };
}

function mostUsual(values: number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted[Math.floor(sorted.length / 2)] ?? 1;
  return Math.max(1e-9, Math.min(sorted.at(-1) ?? 1, outlierFactor * middle));
}
