import { describe, expect, it } from 'vitest';
import { cultureCourse, cultureDates, paceTable, scaledStrain, type StrainLife } from '../../src/biology/index.ts';
import { ordinaryPrior } from '../../src/learning/index.ts';
import { strainLife } from '../../src/reference/index.ts';
import { flyByFly } from './fly-by-fly.ts';
import { individually } from './learning-distortions.ts';
import { scoreHouseholds } from './learning-scores.ts';
import { ordinaryWorld, type WorldOptions } from './learning-world.ts';

const households = 100;

const conditions = { founders: 30, founderAgeDays: 4, mediumMassG: 120, surfaceCm2: 50 };
const harvest = { everyDays: 1, share: 0.5, fromAgeDays: 13 };
const days = 60;
const hourlyC = new Float64Array(24 * 200).fill(24);
const melanogaster = strainLife('melanogaster') as StrainLife;

/** The engine's course stands in the books; the world is followed fly by fly, with no curve at all. */
function flyByFlyWorld(): Partial<WorldOptions> {
  const pace = paceTable(melanogaster, hourlyC);
  const course = cultureCourse(melanogaster, pace, 0, conditions, harvest, days);
  const dates = cultureDates(melanogaster, pace, 0, course);
  const firstSeenAge = { larvae: dates.firstLarvae, pupae: dates.firstPupae, adults: dates.firstAdults };
  return {
    cups: 4,
    books: { curve: Float32Array.from(course.emerged), firstSeenAge, spentAge: dates.spent },
    emergence: (logPace, logYield, random) => {
      const strain = scaledStrain(melanogaster, {
        paceFactor: Math.exp(logPace),
        // The engine knows strains from a fifth to five times the books.
        yieldFactor: Math.min(5, Math.max(0.2, Math.exp(logYield))),
        massFactor: 1,
      });
      const log = flyByFly(strain, hourlyC, conditions, harvest, days, random.below(1e9), { stepHours: 6 });
      return Float64Array.from(log, (day) => day.emerged);
    },
  };
}

const toTens = (flies: number) => Math.round(flies / 10) * 10;
/** Every household's cups differ by about .5. */
const unlikeCups = { prior: { ...ordinaryPrior, cupYieldSd: 0.5 }, spreadLogSd: 0.2 };

const worlds: [string, Partial<WorldOptions>][] = [
  ['as the model says', {}],
  ['one entry in ten is wrong', { wrongShare: 0.1 }],
  ['flies emerge one by one', { distort: individually }],
  ['the keeper rounds counts to tens', { writeCount: toTens }],
  ['the keeper looks on Sundays only', { lookEvery: 7 }],
  ['rounds to tens and looks on Sundays only', { writeCount: toTens, lookEvery: 7 }],
  ['cups differ by .5, not .3', unlikeCups],
  ['the keeper writes words only', { wordShare: 1 }],
  ['every cup followed fly by fly', flyByFlyWorld()],
  [
    'fly by fly, cups differ by .5, tens on Sundays',
    { ...flyByFlyWorld(), ...unlikeCups, writeCount: toTens, lookEvery: 7, cups: 8 },
  ],
];

describe(`next week's flies of living cups, ${households} households a world`, () => {
  for (const [name, options] of worlds) {
    it(`${name}: 90 % bands cover 85 to 95 %, or the log is said not to fit; scores beat books and habit`, () => {
      const { learned, books, lastCup, fits } = scoreHouseholds(households, { ...ordinaryWorld, ...options }, 40_000);
      console.log(
        `${name}: 90 % ${learned.inside90.toFixed(3)}, 50 % ${learned.inside50.toFixed(3)}, ${learned.weeks} weeks, ` +
          `fits ${fits.toFixed(2)}; CRPS ${[learned, books, lastCup].map((s) => s.crps.toFixed(1)).join(' / ')}`,
      );
      // Weeks of one household hang together: the sampling error is that of about `households` draws, .03.
      const covered = learned.inside90 >= 0.85 - 0.03 && learned.inside90 <= 0.95 + 0.03;
      expect(covered || fits < 0.5).toBe(true);
      for (const other of [books, lastCup]) {
        expect(learned.crps).toBeLessThan(other.crps);
        expect(learned.logScore).toBeLessThan(other.logScore);
      }
    }, 600_000);
  }
});
