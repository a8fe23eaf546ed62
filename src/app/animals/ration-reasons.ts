/** Why a ration is other than written, in plain sentences. */
import { type Said, said } from '../../foundation/index.ts';
import type { GroupPeriod } from '../../logbook/index.ts';
import type { RationNow } from './feeding-now.ts';

/** Below this share of change nothing is said. */
const worthSaying = 0.03;

/** Empty where the ration is fed as it was written. */
export function rationReasons(
  { fliesPerFeeding, keepRation }: GroupPeriod,
  { learned, sizeFactor, flySize }: Pick<RationNow, 'learned' | 'sizeFactor' | 'flySize'>,
): Said[] {
  if (keepRation) return [];
  return [...learnedReason(fliesPerFeeding, learned), ...sizeReason(sizeFactor, flySize)];
}

function learnedReason(written: number, { factor, noted, withLeftOvers }: RationNow['learned']): Said[] {
  const [now, before] = [tenths(written * factor), tenths(written)];
  if (factor < 1 - worthSaying)
    return [said`Something was left at ${withLeftOvers} of ${noted} feedings: ${now} each in place of ${before}.`];
  return factor > 1 + worthSaying
    ? [said`You have been giving more, and it was eaten: ${now} each in place of ${before}.`]
    : [];
}

function sizeReason(sizeFactor: number, flySize: RationNow['flySize']): Said[] {
  if (!flySize || Math.abs(sizeFactor - 1) <= worthSaying) return [];
  const percent = Math.round(100 * Math.abs(sizeFactor - 1));
  const change = sizeFactor > 1 ? said`${percent} % more of them` : said`${percent} % fewer of them`;
  const [nowMg, ordinaryMg] = [hundredths(flySize.nowMg.middle), hundredths(flySize.ordinaryMg)];
  return flySize.from === 'weighed'
    ? [said`A fly weighs ${nowMg} mg now, an ordinary one ${ordinaryMg} mg: ${change}.`]
    : [
        said`Cups are fuller than usual or emptier: a fly should weigh ${nowMg} mg, an ordinary one ${ordinaryMg} mg: ${change}.`,
      ];
}

function tenths(value: number): number {
  return Math.round(10 * value) / 10;
}

function hundredths(value: number): number {
  return Math.round(100 * value) / 100;
}
