/** English: steps of work, cautions, and advice on moisture. */
import type { Catalogue } from './catalogue.ts';

export const steps: Catalogue['steps'] = {
  'clear-bench': () => 'Wash your hands and wipe the bench. Put clean cups, lids, labels and a cloth ready.',
  'weigh-dry': ({ cups }) =>
    `Weigh the dry ingredients for ${cups} ${cups === 1 ? 'cup' : 'cups'} and stir them together.`,
  cook: ({ boilMinutes }) =>
    `Stir the mix into the water, bring it to the boil and simmer for ${boilMinutes} minutes, stirring to the bottom.`,
  soak: ({ soakMinutes }) => `Pour the hot water on the mix, stir, and let it swell for ${soakMinutes} minutes.`,
  'add-preservative': ({ amount, unit, preservative, belowC }) =>
    `Off the heat, below ${belowC} °C: stir in ${amount} ${unit} of ${preservative}.`,
  'add-acid': ({ amount, unit, preservative, belowC }) =>
    `Last, below ${belowC} °C: add ${amount} ${unit} of ${preservative} to the medium (never the other way round) and stir.`,
  fill: ({ cups, mediumMassG }) =>
    `Fill ${cups} ${cups === 1 ? 'cup' : 'cups'}, ${mediumMassG} g each, 2 to 3 cm deep.`,
  'cover-and-cool': ({ coolToC }) =>
    `Cover the cups with a clean cloth, so that steam gets out and no fly in, and let them cool to ${coolToC} °C.`,
  'check-moisture': () =>
    'Touch the medium: it should be moist and hold when the cup is tilted. Blot water that stands on it; moisten what is firm.',
  'live-yeast': ({ grains }) => `Sprinkle a little live yeast on each: about ${grains} grains, no more.`,
  'climbing-material': () =>
    'Stand clean, untreated climbing material (wood wool, a coffee filter, card) in the medium.',
  'knock-down': ({ order }) =>
    `Tap the founders' cup on a pad so that the flies drop, or chill it for a few minutes.${order === '' ? '' : ` Open cups in this order, young before old: ${order}.`}`,
  'tap-in-founders': ({ founders, strain }) =>
    `Tap in about ${founders} adult ${strain}, of both sexes, on the dry side of the cup.`,
  'close-lid': ({ holeMm }) =>
    `Close the lid. Air must get through, flies and mites not: cloth or filter paper, or holes below ${holeMm} mm.`,
  label: () => 'Stick on the label: number, strain, date started, first flies, throw-out date.',
  place: ({ warmestC }) =>
    `Put the cups in their place, out of the sun, never directly on a heat mat, below ${warmestC} °C.`,
  'next-day-look': () =>
    'Look the next day: founders alive and climbing, no standing water, no smell. Write down what you see.',
  'end-close-tight': () => 'Close the cup so that nothing gets out; do not open it indoors.',
  'end-freeze': ({ hours, atC }) => `Freeze it for ${hours} hours at about ${atC} °C.`,
  'end-bag-and-bin': () => 'Empty it into a bag, close the bag, and put it in the bin.',
  'end-bin-everything': () =>
    'Put the whole cup, with lid and climbing material, in a closed bag in the bin. Reuse nothing of it.',
  'end-empty-and-wash': () =>
    'Wash cup and lid with hot water and soap, and rinse them well. No insecticide, no scented cleaner.',
  'end-dry': () => 'Let them dry overnight.',
  'end-wipe-shelf': () =>
    'Wipe the shelf with hot soapy water, wash your hands, and look through the neighbouring cups.',
  'end-local-rules': () => 'Waste rules differ: check what your town asks.',
};

export const cautions: Catalogue['cautions'] = {
  'hot-medium': 'Hot medium scalds and sticks: long sleeves, a pot with a handle, no child beside you.',
  'boil-over':
    'Starch boils over suddenly. Keep the heat low and stir; in a microwave, use short bursts in a large bowl.',
  'flammable-stock': 'The preservative stock is mostly alcohol: add it off the heat, no flame near, window open.',
  'corrosive-acid':
    'Concentrated acid burns skin and eyes: gloves, goggles, open window. At home vinegar is the safer choice.',
  'dose-high': 'More preservative is not better: above the usual dose larvae grow slowly or die.',
  mould: 'Never feed from a mouldy cup, and do not open it indoors.',
  allergy:
    'Dust of yeast, mould and flies can cause allergy and asthma: keep the air fresh, wear a mask, stop if you wheeze.',
  'carbon-dioxide': 'Carbon dioxide and dry ice push out the air you breathe: ventilate, and never close dry ice in.',
  chilling: 'Chill only for minutes: flies wake within half a minute, and long cold harms them.',
  'tight-lid': 'Yeast makes gas: never close warm medium or a working cup tightly.',
  'treated-material':
    'No treated paper, insecticide, flea product or mite spray near the flies: animals eat what is on them.',
  children: 'Boiling, acids and alcohol are work for adults.',
  'heat-mat': 'Heat only with a thermostat whose probe is at the cup. Above 28 °C males become sterile and cups fail.',
  escapes: 'Flightless flies still climb: work over a tray and close each cup at once.',
  'never-release': 'Never release flies, compost them alive or flush them.',
  'local-rules': 'Rules on keeping, sending and importing flies differ: check those of your country and state.',
  'freeze-first': 'Freeze before you bin, so that nothing alive leaves the house.',
  mites: 'Mites travel on hands and tools: handle young cups before old ones, and throw out a cup with mites.',
  vet: 'Amounts are starting points. If an animal loses weight or does not eat, see a vet who knows its kind.',
  'wash-hands': 'Wash your hands after handling animals and cups.',
};

export const advice: Catalogue['advice'] = {
  runs: 'The medium runs when the cup is tilted.',
  'shines-and-sticks': 'Its surface shines and flies stick to it.',
  'moist-and-holds': 'It is moist and holds when the cup is tilted.',
  firm: 'It is firm and feels dry.',
  'cracks-from-wall': 'It has cracked and come off the wall.',
  'add-dry-mix': 'Stir in a spoonful of dry mix and let it swell.',
  'blot-with-paper': 'Blot the surface with plain kitchen paper.',
  'stand-open-under-cloth': 'Let it stand for an hour under a cloth only, without the lid.',
  'more-climbing-material': 'Add dry climbing material, so that flies can leave the surface.',
  'drip-boiled-water': 'Drip boiled, cooled water on the edge, a teaspoon a day.',
  'cover-holes-partly': 'Cover half of the lid, so that it dries more slowly.',
  'move-from-heat': 'Move it away from heat and draught.',
  'use-flies-and-restart': 'Use the flies that are there and start a new cup.',
};
