/** German texts. */
import { type Day, monthOf, weekdayOf, weekdays as weekdayKeys } from '../../foundation/index.ts';
import type { Catalogue, GivenWords, JobKey, Sentence, SitterWords } from './catalogue.ts';
import { decimal } from './de-number.ts';
import { advice, cautions, steps } from './de-steps.ts';
import { hoursAndMinutes } from './hours-and-minutes.ts';

const weekdays = ['Mo', 'Di', 'Mi', 'Do', 'Fr', 'Sa', 'So'];
const months = [
  'Januar',
  'Februar',
  'März',
  'April',
  'Mai',
  'Juni',
  'Juli',
  'August',
  'September',
  'Oktober',
  'November',
  'Dezember',
];

const jobs: Record<JobKey, Sentence> = {
  start: ({ cups, strain }) => `${cups ?? 1} Becher ${strain} ansetzen`,
  feed: ({ group, flies }) => (flies === undefined ? `${group} füttern` : `${group} füttern: ${flies} Fliegen`),
  look: ({ cultures, group }) => `Nachsehen: ${cultures || group || 'die Becher'}`,
  discard: ({ cultures }) => `Wegwerfen: ${cultures || 'verbrauchte Becher'}`,
  mix: () => 'Nährbrei mischen',
  buy: ({ cups, strain }) => `${cups ?? 1} Becher ${strain} bestellen`,
  receive: ({ cups, strain }) => `${cups ?? 1} Becher ${strain} erwartet`,
  move: ({ cultures, place }) => `Umstellen: ${cultures || 'Becher'}${place ? ` nach ${place}` : ''}`,
  stretch: () => 'Mit den Fliegen haushalten',
  wash: ({ cups }) => (cups === undefined ? 'Becher waschen' : `${cups} Becher waschen`),
  shop: () => 'Für die Küche einkaufen',
};

const sitter: SitterWords = {
  title: 'Die Tiere füttern, während wir weg sind',
  howTitle: 'So wird gefüttert',
  how: [
    'Den Becher des Tages nehmen. Seinen Boden ein paar Mal auf den Tisch klopfen: Die Fliegen fallen herunter. Fliegen können sie nicht.',
    'Den Deckel über dem Futterglas etwas öffnen, die gewünschte Zahl Fliegen hineinklopfen, den Becher sofort schließen.',
    'Die Fliegen aus dem Glas zu den Tieren klopfen und die Tür schließen.',
    'Den Becher zurückstellen: nicht in die Sonne, Deckel zu, aufrecht. Hände waschen.',
  ],
  daysTitle: 'Tag für Tag',
  day: 'Tag',
  feed: 'Füttern',
  fromCup: 'aus Becher',
  look: 'Nachsehen',
  lookHow:
    'Nachsehen heißt: den geschlossenen Becher gegen das Licht halten. Bewegen sich Fliegen oder Maden, kein Pelz, kein stehendes Wasser? Dann abhaken.',
  done: 'Erledigt',
  nothing: 'Nichts zu tun',
  feeding: ({ group, flies }) => `${group}: etwa ${flies} Fliegen`,
  wrongTitle: 'Wenn etwas nicht stimmt',
  wrong: [
    [
      'Wenige oder keine Fliegen im Becher',
      'Den nächsten Becher der Liste nehmen. Hat keiner Fliegen, weniger füttern; die Tiere können ein, zwei Tage warten. Dann anrufen.',
    ],
    [
      'Grüner, grauer oder schwarzer Pelz im Becher',
      'Nicht öffnen, nicht daraus füttern. Nach draußen stellen und anrufen.',
    ],
    ['Wasser steht im Becher, Fliegen ertrinken', 'Mit einfachem Küchenpapier abtupfen und wieder schließen.'],
    [
      'Winzige helle Punkte krabbeln am Deckel',
      'Den Becher nicht öffnen. Getrennt von den anderen stellen und anrufen.',
    ],
    ['Fliegen sind entwischt', 'Sie klettern, fliegen aber nicht. Aufwischen. Kein Spray: Es schadet den Tieren.'],
    [
      'Ein Tier liegt still, ist dünn oder frisst nicht',
      'Nicht mehr füttern. Anrufen; den Tierarzt fragen, wenn wir nicht erreichbar sind.',
    ],
  ],
  leave: 'Alle anderen Becher stehen lassen. Kein Insektenspray, keine Duftkerze, kein Flohmittel im Raum.',
  contact: 'Anrufen',
};

const given: GivenWords = {
  title: ({ strain }) => `Ein Ansatz ${strain}`,
  what: ({ strain }) =>
    `In diesem Becher sind Nährbrei, Eier, Larven und Puppen von ${strain}, einer Fruchtfliege, die nicht fliegen kann, als Futter für kleine Tiere.`,
  datesTitle: ({ temperatureC }) =>
    `Was bei etwa ${decimal(temperatureC)} °C zu erwarten ist (kälter langsamer, wärmer schneller)`,
  started: 'Angesetzt',
  firstFlies: 'Erste neue Fliegen',
  best: 'Die meisten Fliegen',
  founders: 'Beste Tage für den nächsten Ansatz',
  throwOut: 'Wegwerfen bis',
  feedTitle: 'Daraus füttern',
  feed: [
    'Bei 20 bis 25 °C aufstellen, nicht in die Sonne, Deckel zu, nie direkt auf eine Heizmatte.',
    'Den Becher auf den Tisch klopfen, damit die Fliegen fallen, etwas öffnen, herausklopfen, was gebraucht wird, schließen.',
    'Füttern, was an einem Tag gefressen wird. Immer einige Fliegen im Becher lassen.',
  ],
  nextTitle: 'Den nächsten Becher ansetzen',
  next: [
    'Frischen Nährbrei mischen, unter einem Tuch abkühlen lassen, eine Prise Trockenhefe und etwas zum Klettern dazugeben.',
    'In den besten Tagen 30 bis 50 erwachsene Fliegen hineinklopfen. Stämme nicht mischen: Der Nachwuchs kann fliegen.',
    'Mit Stamm und Tag beschriften. Zwei Becher verschiedenen Alters halten, falls einer ausfällt.',
  ],
  cautionsTitle: 'Bitte',
  calendar: 'Diese Tage für den Kalender',
  calendarCodes: 'Für den Kalender: Jeder Code enthält ein Datum. Ein Netz braucht es nicht.',
};

export const de: Catalogue = {
  language: 'de',
  dayWithWeekday: (d) => `${weekdays[weekdayKeys.indexOf(weekdayOf(d))]} ${dayShort(d)}`,
  dayLong: (d) => `${Number(d.slice(8))}. ${months[monthOf(d) - 1]} ${d.slice(0, 4)}`,
  dayShort,
  monthTitle: (year, month) => `${months[month - 1]} ${year}`,
  weekdays,
  span: (from, until) => `${dayShort(from)} bis ${dayShort(until)}`,
  label: { started: 'Start', firstFlies: 'Fliegen', throwOut: 'weg' },
  jobs,
  steps,
  cautions,
  advice,
  sitter,
  given,
  sheets: {
    cup: 'Becher',
    strain: 'Stamm',
    started: 'Angesetzt',
    firstFlies: 'Erste Fliegen',
    foundersBetween: 'Gründer',
    throwOut: 'Wegwerfen',
    shelfTitle: 'Auf diesem Regal',
    monthLegend: 'Erledigtes abhaken.',
    checklistTitle: ({ cups, strain }) => `${cups} Becher ${strain} ansetzen`,
    endTitle: 'Das Ende eines Bechers',
    minutes: ({ minutes }) => `${minutes} min`,
    after: (minutes) => (minutes === 0 ? 'zuerst' : `nach ${hoursAndMinutes(minutes)}`),
    cautions: 'Vorsicht',
    made: ({ day }) => `Stand ${day}`,
  },
};

function dayShort(d: Day): string {
  return `${Number(d.slice(8))}.${Number(d.slice(5, 7))}.`;
}
