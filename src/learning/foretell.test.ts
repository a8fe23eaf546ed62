import { describe, expect, it } from 'vitest';
import { normalCdf, randomStream } from '../foundation/index.ts';
import { type CupOutlook, foretoldNotes, foretoldSights } from './foretell.ts';
import { ordinaryPrior } from './priors.ts';

const draws = 20_000;
const all = (value: number) => new Float64Array(draws).fill(value);
const sure = { ...ordinaryPrior, wrongEntryShare: 0 };

/** A cup with 99 flies now, from which nothing more emerges and in which nothing dies. */
function outlook(writing: { countSd: number; wordOffset: number }): CupOutlook {
  return {
    fromAge: 20,
    emergedByAge: new Float32Array(60),
    adultDailySurvival: 1,
    logPace: all(0),
    logYield: all(0),
    fliesNow: all(99),
    countSd: all(writing.countSd),
    wordOffset: all(writing.wordOffset),
  };
}

describe('a note foretold', () => {
  const note = { ageDays: 22, isWord: true };

  it('is a word where this keeper begins it: the share above a beginning is the normal one', () => {
    const words = foretoldNotes(outlook({ countSd: 0.4, wordOffset: 0.3 }), [], note, sure, randomStream(1, 'word'));
    // log(100) - 0.3 with sd sqrt(0.4^2 + 0.35^2), against `plenty` from 60.
    const expected = 1 - normalCdf((Math.log(60) + 0.3 - Math.log(100)) / Math.hypot(0.4, 0.35));
    const share = words.filter((w) => w >= 60).length / draws;
    expect(Math.abs(share - expected)).toBeLessThan(4 * Math.sqrt((expected * (1 - expected)) / draws));
  });

  it('is a number with this keeper’s error, whatever their words mean', () => {
    const counted = foretoldNotes(
      outlook({ countSd: 0.4, wordOffset: 0.3 }),
      [],
      { ...note, isWord: false },
      sure,
      randomStream(2, 'count'),
    );
    const logs = counted.map((c) => Math.log(c + 1));
    const mean = logs.reduce((a, b) => a + b, 0) / draws;
    const sd = Math.sqrt(logs.reduce((a, b) => a + (b - mean) ** 2, 0) / draws);
    expect(Math.abs(mean - Math.log(100))).toBeLessThan(4 * (0.4 / Math.sqrt(draws)));
    expect(Math.abs(sd - 0.4)).toBeLessThan(0.01);
  });

  it('is sometimes wrong: as often as notes are', () => {
    const by = { ...ordinaryPrior, wrongEntryShare: 0.1 };
    const counted = foretoldNotes(
      outlook({ countSd: 0.01, wordOffset: 0 }),
      [],
      { ...note, isWord: false },
      by,
      randomStream(3, 'wrong'),
    );
    const strays = counted.filter((c) => Math.abs(c - 99) > 10).length / draws;
    // Of the wrong ones (sd 1.5) 94.7 % lie beyond a tenth of 100 flies.
    expect(Math.abs(strays - 0.0947)).toBeLessThan(4 * Math.sqrt((0.09 * 0.91) / draws));
  });
});

describe('the first sight of a stage foretold', () => {
  it('lies after the last day on which it was not there, as a normal cut off there does', () => {
    const ages = foretoldSights('pupae', 8, 8.7, all(0), randomStream(4, 'sight'));
    expect(Math.min(...ages)).toBeGreaterThanOrEqual(8.7);
    // Mean of a standard normal above 1: 1.5251 (density over tail); sd of the sight .7 days.
    const mean = ages.reduce((a, b) => a + b, 0) / draws;
    expect(Math.abs(mean - (8 + 0.7 * 1.5251))).toBeLessThan(0.02);
  });
});
