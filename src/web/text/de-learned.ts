/** Worte dessen, was das Logbuch gelehrt hat, auf Deutsch. */
import type { enLearned } from './en-learned.ts';
import type { Message } from './message.ts';

export const deLearned: Record<keyof typeof enLearned, Message> = {
  'learned.less.than': 'weniger',
  'learned.more.than': 'mehr',
  'learned.none': '0 %',
  'learned.misfit': 'Das Logbuch passt nicht zum Modell. Vorhersagen mit Vorsicht nehmen.',
  'learned.rest': { one: 'Noch etwas, was es gelehrt hat', other: 'Noch {count} Dinge, die es gelehrt hat' },
  'learned.strays': 'Becher aus der Bahn',
  'learned.doubts': 'Notizen zum Nachsehen',
  'learned.doubts.lead':
    'Was nicht sein kann, bleibt aus jeder Rechnung; was unwahrscheinlich ist, zählt wenig. Den Eintrag berichtigen oder stehen lassen.',
  'learned.doubts.none': 'Keine Notiz widerspricht einer anderen.',
  'learned.doubts.found': 'Gefunden: {found}; erwartet: {expected}.',
  'learned.doubts.leftOut': 'Ausgelassen.',
  'learned.doubts.little': 'Zählt wenig.',
  'learned.doubts.entry': 'Zum Eintrag',
  'learned.doubts.log': 'Logbuch',
  'learned.hindcast': 'Was vorhergesagt war, und was kam',
  'learned.hindcast.none': 'Noch lässt sich keine Notiz der letzten Wochen gegen eine Vorhersage halten.',
  'learned.hindcast.reckoning': 'Alte Vorhersagen werden noch einmal gemacht …',
  'learned.hindcast.picture':
    'Notizen der letzten {weeks} Wochen in ihren Vorhersagen: {inside} % lagen in dem Band, das 90 % halten soll.',
  'learned.hindcast.sum':
    '{inside90} % von {notes} Notizen lagen in dem Band, das 90 % halten soll, {inside50} % in dem für 50 %.',
  'learned.hindcast.error':
    'Vorhersagen verfehlten die Zählungen um etwa {error} Fliegen, ihr Band mitbedacht; ohne Gelerntes um {books}.',
  'learned.hindcast.harvests':
    'Von {taken} Ernten, die Fliegen übrig ließen, nahmen {beyond} mehr, als das Band enthielt.',
  'learned.hindcast.high': 'mehr oder später als vorhergesagt',
  'learned.hindcast.low': 'weniger oder früher als vorhergesagt',
  'learned.hindcast.madeOn': 'Vorhersage vom',
  'learned.hindcast.notes': 'Notizen',
  'learned.hindcast.in50': 'In 50 %',
  'learned.hindcast.in90': 'In 90 %',
  'learned.hindcast.crps': 'Fehler, Fliegen',
  'learned.hindcast.books': 'Bücher, Fliegen',
  'learned.hindcast.key':
    'Jeder Punkt ist eine Notiz der Woche danach: im dunklen Band sollen 50 % liegen, im hellen 90 %.',
  'culture.offCourse': 'Aus der Bahn: was zu prüfen ist',
  'culture.offCourse.noted': 'im Logbuch vermerkt',
  'today.offCourse': 'Becher aus der Bahn',
};
