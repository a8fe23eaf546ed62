/** English sentences about lines. */
import { type LineTexts, percentOf } from './catalogue.ts';

export const en: LineTexts = {
  sentences: {
    'mix-same-mutation': ({ first, second }) =>
      `${first} and ${second} carry the same mutation: their offspring cannot fly.`,
    'mix-same-mutation-do': () => 'Mixing is safe for flight; note both parents.',
    'mix-fliers': ({ first, second, worstShare }) =>
      `Each of ${first} and ${second} has the wild form of what the other lacks, so their offspring fly: up to ${percentOf(worstShare)} of the cup.`,
    'mix-keep-apart': () => 'Keep them in separate cups.',
    'mix-throw-out': () => 'If it has happened: throw the cup out and start again from a pure one.',
    'mix-unknown': ({ first, second, worstShare }) =>
      `Nobody knows whether ${first} and ${second} carry the same mutation. If they do not, up to ${percentOf(worstShare)} of the cup will fly.`,
    'mix-find-out': () =>
      'To find out, put a few virgin females of one with males of the other in a cup of their own: any winged offspring means two mutations.',
    'mix-two-species': ({ first, second }) =>
      `${first} and ${second} do not cross, so no fliers come of it, but the one that breeds faster takes over the cup.`,
    'mix-sort-by-eye': () =>
      'If it has happened, start new cups from flies sorted by eye, and sort again a generation later.',
    'rescue-empty': () => 'Tap every adult out of the cup. Kill the winged ones.',
    'rescue-empty-why': () => "Females that are there may carry a winged male's sperm, for two weeks.",
    'rescue-virgins': ({ hours, females, males }) =>
      `Within ${hours} hours take the flightless females that have emerged since, with flightless males, ${females} and ${males} to a new cup. Repeat as long as the cup gives; then freeze it.`,
    'rescue-virgins-why': ({ hours }) =>
      `Females do not mate in their first ${hours} hours at this temperature. A fly that cannot fly carries no wild form of a recessive.`,
    'rescue-check': ({ flies }) =>
      `Look at ${flies} flies of each new cup before you take founders from it. One that can fly: throw that cup out.`,
    'rescue-check-why': ({ cleanShare }) => `With none seen, the chance that it is clean is ${percentOf(cleanShare)}.`,
    'unmix-pairs': ({ pairs, hours }) =>
      `Set up ${pairs} cups of one pair each: a virgin female, taken within ${hours} hours, and a male, both looking like the strain you want.`,
    'unmix-pairs-why': ({ pairs, cleanShare, anyShare }) =>
      `Each pair is clean with chance ${percentOf(cleanShare)}; of ${pairs}, one is with ${percentOf(anyShare)}.`,
    'unmix-sons': ({ sons }) =>
      `Put ${sons} sons of each pair, singly, with virgin females of the other strain, pure (a test-cross).`,
    'unmix-sons-why': () => 'A son that carries the other mutation has half his offspring flightless.',
    'unmix-look': ({ offspring }) =>
      `Look at ${offspring} offspring of each son. Keep the pairs none of whose sons gave a flightless fly.`,
    'unmix-look-why': ({ offspring, seenShare }) =>
      `A carrier shows itself among ${offspring} offspring with chance ${percentOf(seenShare)}.`,
    'line-refresh': ({ lossShare }) =>
      `${percentOf(lossShare)} of its variation is gone: bring in flies of the same mutation from another line, after quarantine.`,
    'line-more-founders': ({ lossShare, size, generations }) =>
      `${percentOf(lossShare)} of its variation is gone; with ${size} effective founders it is time to refresh in about ${generations} generations.`,
    'line-fine': ({ lossShare, size }) =>
      `${percentOf(lossShare)} of its variation is gone; ${size} effective founders keep the rest well.`,
    'backup-enough': ({ cups, lostShare }) => `${cups} cups are lost together with chance ${percentOf(lostShare)}.`,
    'backup-elsewhere': () =>
      'No number of cups in one place is enough: keep one in another room, on another batch of medium, started on another day.',
    'quarantine-apart': () =>
      'Stand it away from the others, on a dry tray. Handle it last, then wash hands and tools.',
    'quarantine-look': ({ generation }) =>
      `Look for mites, mould and winged flies; carry clean flies over to a fresh cup (generation ${generation}), freeze the old one.`,
    'quarantine-done': () => 'Look once more. Clean: it may join the others.',
    'part-by-date': ({ days, early }) =>
      `Of a cup started with both, the flies of the first ${days} days of emergence are ${early}: start its cups from those.`,
    'part-clear': ({ late }) => `Clear them daily until then; for ${late} take flies that emerge later, sorted by eye.`,
    'part-by-eye': () =>
      'Sort chilled flies by size and colour into cups of their own, and look again a generation later.',
    'wings-unknown': () => 'No source says how warmth changes this strain. Take winged flies out and keep them apart.',
    'wings-unknown-rear': () => 'Rear a cup from flightless ones at 20 to 24 °C and look again at its offspring.',
    'wings-cool': () => 'Do not cull yet: cool the cups to 20 to 24 °C.',
    'wings-look-again': () =>
      'Look again at flies that grew up in the cool. Wings as before: it was the warmth or the food. Still winged: treat it as a stranger in the line.',
    'wings-stranger': () =>
      'At this temperature the mutant keeps its wings short: treat a winged fly as a stranger in the line.',
    'two-species-here': ({ winner }) => `The one that breeds faster takes over the cup. Here that is ${winner}.`,
    'winged-warmth': ({ temperatureC }) =>
      `It grew up at ${Number(temperatureC).toFixed(0)} °C, where this mutant's wings grow longer; such flies are still mutants.`,
    'winged-food': () =>
      "Methylparaben in its medium lengthens this mutant's wings, in males more; such flies are still mutants.",
    'winged-stranger': () =>
      'A winged fly in a flightless line is most likely a stranger, and its wild form of the gene stays for ever unless it is taken out.',
    'winged-isolate': () => 'Throw the cup out if you have another of the line; else isolate it and follow the steps.',
    'mites-near': () => 'Mites walk from cup to cup and ride on flies and tools.',
    'mould-near': () => 'Mould spreads by spores and by flies that are carried over.',
    'near-throw-out': () => 'Throw the cup out, closed, and take no founders from it.',
    'near-look': () =>
      'Look closely at the cups one contact away before they give founders; keep them apart until they are clean.',
    'spread-split': () => 'Its cups stand in more than one place and come from more than one day.',
    'spread-hangs': ({ oneCup, onePlace, oneDay }) => {
      const shared = [oneCup ? 'one cup' : '', onePlace ? 'one place' : '', oneDay ? "one day's work" : ''];
      return `The line hangs on ${shared.filter((s) => s !== '').join(' and ')}: keep a backup cup elsewhere, started on another day on another batch of medium.`;
    },
  },
  assumptions: {
    'as named': 'as named',
    'same mutation': 'the two carry the same mutation',
    'two mutations': 'two different mutations, none on the X',
    'two mutations, one on the X': 'two different mutations, an unknown one on the X',
    'one wild male': 'one wild male among the founders, nothing done',
  },
};
