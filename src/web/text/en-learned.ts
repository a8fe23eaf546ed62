/** Words of what the log has taught, in English. */
import type { Message } from './message.ts';

export const enLearned = {
  'learned.less.than': 'less',
  'learned.more.than': 'more',
  'learned.none': '0 %',
  'learned.misfit': 'The log does not fit the model. Take forecasts with care.',
  'learned.rest': { one: 'One more thing it taught', other: '{count} more things it taught' },
  'learned.strays': 'Cups off course',
  'learned.doubts': 'Notes to look at',
  'learned.doubts.lead':
    'What cannot be is left out of every reckoning; what is unlikely counts for little. Correct the entry, or leave it.',
  'learned.doubts.none': 'No note contradicts another.',
  'learned.doubts.found': 'Found {found}; expected {expected}.',
  'learned.doubts.leftOut': 'Left out.',
  'learned.doubts.little': 'Counts for little.',
  'learned.doubts.entry': 'See the entry',
  'learned.doubts.log': 'Logbook',
  'learned.hindcast': 'What was forecast, and what came',
  'learned.hindcast.none': 'No note of the last weeks can be held against a forecast yet.',
  'learned.hindcast.reckoning': 'Old forecasts are being made again …',
  'learned.hindcast.picture':
    'Notes of the last {weeks} weeks in their forecasts: {inside} % lay in the band that should hold 90 %.',
  'learned.hindcast.sum':
    '{inside90} % of {notes} notes lay in the band that should hold 90 %, {inside50} % in the one for 50 %.',
  'learned.hindcast.error':
    'Forecasts missed the counts by about {error} flies, their bands allowed for; without anything learned by {books}.',
  'learned.hindcast.harvests': 'Of {taken} harvests that left flies behind, {beyond} took more than the band held.',
  'learned.hindcast.high': 'more, or later, than forecast',
  'learned.hindcast.low': 'fewer, or sooner, than forecast',
  'learned.hindcast.madeOn': 'Forecast of',
  'learned.hindcast.notes': 'Notes',
  'learned.hindcast.in50': 'In 50 %',
  'learned.hindcast.in90': 'In 90 %',
  'learned.hindcast.crps': 'Error, flies',
  'learned.hindcast.books': 'Books, flies',
  'learned.hindcast.key':
    'Each dot is a note of the week after: inside the dark band 50 % should lie, inside the light one 90 %.',
  'culture.offCourse': 'Off course: what to check',
  'culture.offCourse.noted': 'noted in the log',
  'today.offCourse': 'Cups off course',
} satisfies Record<string, Message>;
