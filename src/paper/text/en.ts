/** English texts. */
import { type Day, monthOf, weekdayOf, weekdays as weekdayKeys } from '../../foundation/index.ts';
import type { Catalogue, GivenWords, JobKey, Sentence, SitterWords } from './catalogue.ts';
import { advice, cautions, steps } from './en-steps.ts';
import { hoursAndMinutes } from './hours-and-minutes.ts';

const weekdays = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

const jobs: Record<JobKey, Sentence> = {
  start: ({ cups, strain }) => `Start ${cups ?? 1} ${cups === undefined || cups === 1 ? 'cup' : 'cups'} of ${strain}`,
  feed: ({ group, flies }) => (flies === undefined ? `Feed ${group}` : `Feed ${group}: ${flies} flies`),
  look: ({ cultures, group }) => `Look at ${cultures || group || 'the cups'}`,
  discard: ({ cultures }) => `Throw out ${cultures || 'spent cups'}`,
  mix: () => 'Mix medium',
  buy: ({ cups, strain }) => `Order ${cups ?? 1} ${cups === undefined || cups === 1 ? 'cup' : 'cups'} of ${strain}`,
  receive: ({ cups, strain }) =>
    `${cups ?? 1} ${cups === undefined || cups === 1 ? 'cup' : 'cups'} of ${strain} should arrive`,
  move: ({ cultures, place }) => `Move ${cultures || 'cups'}${place ? ` to ${place}` : ''}`,
  stretch: () => 'Make the flies last',
  wash: ({ cups }) => (cups === undefined ? 'Wash cups' : `Wash ${cups} cups`),
  shop: () => 'Shop for the kitchen',
};

const sitter: SitterWords = {
  title: 'Feeding the animals while we are away',
  howTitle: 'How to feed',
  how: [
    'Take the cup named for the day. Tap its bottom on the table a few times: the flies drop. They cannot fly.',
    'Open the lid a little over the feeding jar, tap the wanted number of flies in, and close the cup at once.',
    'Tap the flies from the jar into the animals’ home and close its door.',
    'Put the cup back in its place: out of the sun, lid closed, upright. Wash your hands.',
  ],
  daysTitle: 'Day by day',
  day: 'Day',
  feed: 'Feed',
  fromCup: 'from cup',
  look: 'Look at',
  lookHow:
    'Looking at a cup: hold it to the light, lid closed. Are flies or maggots moving, is there no fur and no standing water? Then tick it.',
  done: 'Done',
  nothing: 'Nothing to do',
  feeding: ({ group, flies }) => `${group}: about ${flies} flies`,
  wrongTitle: 'If something is not right',
  wrong: [
    [
      'Few or no flies in the cup',
      'Take the next cup on the list. If none has flies, feed less; the animals can wait a day or two. Then call.',
    ],
    ['Green, grey or black fur in a cup', 'Do not open it and do not feed from it. Set it aside outdoors and call.'],
    ['Water stands in a cup, flies drown', 'Blot it with plain kitchen paper and close it again.'],
    ['Tiny pale dots crawl on the lid', 'Do not open that cup. Set it apart from the others and call.'],
    ['Flies got out', 'They climb but do not fly. Wipe them up. Use no spray: it would harm the animals.'],
    ['An animal lies still, is thin, or will not eat', 'Do not feed more. Call; ask the vet if we cannot be reached.'],
  ],
  leave: 'Leave all other cups alone. No insect spray, scented candle or flea product in the room.',
  contact: 'Call',
};

const given: GivenWords = {
  title: ({ strain }) => `A culture of ${strain}`,
  what: ({ strain }) =>
    `This cup holds medium with eggs, larvae and pupae of ${strain}, a fruit fly that cannot fly, as food for small animals.`,
  datesTitle: ({ temperatureC }) => `What to expect at about ${temperatureC} °C (colder is slower, warmer quicker)`,
  started: 'Started',
  firstFlies: 'First new flies',
  best: 'Most flies',
  founders: 'Best days to start the next cup',
  throwOut: 'Throw out by',
  feedTitle: 'Feeding from it',
  feed: [
    'Stand it at 20 to 25 °C, out of the sun, lid closed, never directly on a heat mat.',
    'Tap the cup on the table so that the flies drop, open it a little, tap out what you need, close it.',
    'Feed what is eaten in a day. Always leave some flies in the cup.',
  ],
  nextTitle: 'Starting the next cup',
  next: [
    'Mix fresh medium, let it cool under a cloth, and add a pinch of live yeast and something to climb.',
    'Tap in 30 to 50 adult flies in the best days. Do not mix strains: their young may fly.',
    'Label it with strain and date. Keep two cups of different age, in case one fails.',
  ],
  cautionsTitle: 'Please',
  calendar: 'These dates for your calendar',
  calendarCodes: 'For your calendar: each code holds one date. No network is needed.',
};

export const en: Catalogue = {
  language: 'en',
  dayWithWeekday: (d) => `${weekdays[weekdayKeys.indexOf(weekdayOf(d))]} ${dayShort(d)}`,
  dayLong: (d) => `${Number(d.slice(8))} ${months[monthOf(d) - 1]} ${d.slice(0, 4)}`,
  dayShort,
  monthTitle: (year, month) => `${months[month - 1]} ${year}`,
  weekdays,
  span: (from, until) => `${dayShort(from)} to ${dayShort(until)}`,
  label: { started: 'started', firstFlies: 'flies', throwOut: 'out' },
  jobs,
  steps,
  cautions,
  advice,
  sitter,
  given,
  sheets: {
    cup: 'Cup',
    strain: 'Strain',
    started: 'Started',
    firstFlies: 'First flies',
    foundersBetween: 'Founders',
    throwOut: 'Throw out',
    shelfTitle: 'On this shelf',
    monthLegend: 'Tick what is done.',
    checklistTitle: ({ cups, strain }) => `Starting ${cups} ${cups === 1 ? 'cup' : 'cups'} of ${strain}`,
    endTitle: 'The end of a cup',
    minutes: ({ minutes }) => `${minutes} min`,
    after: (minutes) => (minutes === 0 ? 'first' : `after ${hoursAndMinutes(minutes)}`),
    cautions: 'Take care',
    made: ({ day }) => `As of ${day}`,
  },
};

function dayShort(d: Day): string {
  return `${Number(d.slice(8))} ${(months[monthOf(d) - 1] as string).slice(0, 3)}`;
}
