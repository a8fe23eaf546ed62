/** The reckoning behind each number in plain words, in English. */
import type { Message } from './message.ts';

export const enWhy = {
  'why.open': 'Why',
  'why.today.onHand': {
    one: 'The flies that should be alive in one cup: {cups}. It is reckoned from its founders, its warmth and what you wrote of it. The number is the middle of all plays; nine of ten lie between {low} and {high}.',
    other:
      'The flies that should be alive in {count} cups: {cups}. Each is reckoned from its founders, its warmth and what you wrote of it. The number is the middle of all plays; nine of ten lie between {low} and {high}.',
  },
  'why.today.wanted': 'What today’s feedings take of this strain: {feedings}.',
  'why.today.wantedNone': 'No feeding of today is left to do with this strain.',
  'why.culture.flies': 'The flies now',
  'why.culture.made':
    '{founders} founders on {g} g of medium, {days} days ago: the books say what grows from that at the warmth of its place.',
  'why.culture.told':
    'Your looks ({looks}) and harvests ({harvests}, {taken} flies) then moved it, and what was taken is gone from it. The number is the middle of all plays; nine of ten lie between {low} and {high}.',
  'why.culture.next':
    'The books give the age for each at the warmth of its place; what you saw moves this cup’s own pace. The day is the middle of all plays, nine of ten lie in the range.',
  'why.culture.out':
    'It is thrown out when hardly any flies are still to come, and at the latest at the age at which mites and mould win.',
  'why.forecast.noShort': 'The share of {n} plays in which every feeding of these weeks found enough flies.',
  'why.forecast.firstRisky':
    'The first day on which fewer than {asked} of the plays had enough. How sure a day should be is your choice, in the settings.',
  'why.forecast.run':
    'Of the plays with a short day, the longest row of short days: its mean, and what 19 of 20 of them stay within.',
  'why.plan.worst': 'The day on which the fewest of {n} plays had enough flies.',
  'why.plan.short':
    'Days with too few flies in {weeks} weeks, the mean of all plays. Most have none; a few have several.',
  'why.plan.bought': 'The mean of all plays: what is ordered now, and what a play had to buy when its own cups failed.',
  'why.plan.bound':
    'Feeding everyone takes at least so many cups even if none ever failed. It is worked out exactly, as an integer program.',
  'why.plan.certain':
    'By your rules and with nothing uncertain it would be {certain}; what the plan takes beyond that is the price of not knowing.',
  'why.plan.homeGrown':
    'The first day on which flies could come out of a cup that is started from now on, at the warmth of its place. Until then cups that stand already feed, or bought ones.',
  'why.plan.spans': 'The chance that nobody goes short',
  'why.plan.groups':
    'Each chance is the share of {n} plays. A ration that comes late, but within the days a group can wait, is not missed.',
  'why.animals.week': 'The coming seven days of every group, added up: {groups}.',
  'why.animals.group': {
    one: '{count} animal, about {flies} flies at each of {feedings} feedings in the coming seven days.',
    other: '{count} animals, about {flies} flies each at each of {feedings} feedings in the coming seven days.',
  },
  'why.animals.ratio':
    'Calcium and phosphorus in the week’s flies, as measured in flies, and in the dust of your schedule as if all of it were eaten: milligrams by milligrams.',
  'why.ledger.fliesPerCup': 'Flies that you wrote as taken, of all cups that have ended, by the number of those cups.',
  'why.ledger.mediumPerFly': 'The medium of the cups that have ended, by the flies taken from them.',
  'why.ledger.costPer100':
    'What went into the cups that have ended, at your prices, by a hundred flies taken. Bought cups count nothing here.',
  'why.larder':
    'Each amount as last counted, less what was mixed since, by what one cup takes of the recipe. A mark is a cup.',
  'why.mix.cost':
    'Your prices for what goes in, with what sticks to the pot; flies by the hundred as your ended cups gave them.',
  'why.strains.of': '{strain}: days and flies',
  'why.strains':
    'A cup started today with your usual founders and medium, at {degrees} in {place}: by the books, with the corrections you gave this strain.',
  'why.lines.generations': 'The longest way back from a living cup over the cups that gave it founders.',
  'why.lines.left':
    'Of the living cup with the least: every generation loses one part in twice its effective founders (Wright 1931), and cups of one line share what they lost.',
  'why.lines.count': 'Counted in the logbook among the cups of this line that have not ended.',
  'why.warmth':
    'Days ahead start at the last reading and go back to what is usual for the season; the range holds nine days of ten and widens as your thermometer has strayed.',
  'why.lifecycle':
    'The books’ rates for laying, growing and dying at this warmth, with less from each female the more founders crowd the medium; half of the flies are taken each time. Nothing of your log is in it.',
} satisfies Record<string, Message>;
