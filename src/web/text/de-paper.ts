/** German: what is printed, and the calendar. */
import type { enPaper } from './en-paper.ts';
import type { Message } from './message.ts';

export const dePaper: Record<keyof typeof enPaper, Message> = {
  'screen.paper': 'Papier und Kalender',
  'more.paper': 'Etiketten, Blätter für Kühlschrank, Vertretung oder Geschenk; der Plan im Kalender',

  'paper.labels': 'Etiketten',
  'paper.shelf': 'Regalkarte',
  'paper.month': 'Monat',
  'paper.sitter': 'Vertretung',
  'paper.given': 'Geschenk oder Verkauf',
  'paper.calendar': 'Kalender',
  'paper.labels.lead': 'Eines je Becher, mit einem Code, der den Becher auf dieser Seite öffnet.',
  'paper.shelf.lead': 'Die Becher eines Regals mit ihren Tagen, zum Danebenhängen.',
  'paper.month.lead': 'Ein Monat für den Kühlschrank: was an welchem Tag zu tun ist, zum Abhaken.',
  'paper.sitter.lead':
    'Für jemanden, der nie eine Fliege sah: jeden Tag, wer aus welchem Becher gefüttert wird, und was schiefgehen kann.',
  'paper.given.lead':
    'Eine Seite für den, der einen Becher bekommt: die Tage bei der Wärme seines Zimmers, Füttern, der nächste Becher, Vorsicht.',
  'paper.calendar.lead':
    'Die Arbeiten des Plans dort, wo man ohnehin hinsieht. Ändert sich der Plan, rücken die Termine; doppelt stehen sie nie.',
  'paper.print': 'Drucken',
  'paper.printHint': 'In voller Größe (100 %) drucken, ohne Kopfzeilen.',
  'paper.reckoning': 'Die Seite wird gesetzt…',
  'paper.labelForm': 'Etiketten auf',
  'paper.labelForm.sheet': 'einem Bogen',
  'paper.labelForm.single': 'einzeln',
  'paper.sheet': 'Bogen',
  'paper.sheetName': '{paper}, {size} mm, {count} Etiketten',
  'paper.skip': 'Schon verbrauchte Plätze',
  'paper.skipHint': 'Ein angefangener Bogen wird so nicht verschwendet.',
  'paper.width': 'Breite',
  'paper.height': 'Höhe',
  'paper.whichLabels': 'Für diese Becher (keiner gewählt: alle)',
  'paper.whichShelf': 'Welcher Platz (keiner gewählt: alle)',
  'paper.oneShelf': 'Alle lebenden Becher.',
  'paper.whichMonth': 'Monat',
  'paper.from': 'Erster Tag der Abwesenheit',
  'paper.until': 'Letzter Tag der Abwesenheit',
  'paper.contact': 'Wen anrufen',
  'paper.whichCup': 'Der Becher',
  'paper.theirRoom': 'Dort, wo er hinkommt, sind es',
  'paper.link': 'Adresse einer eigenen Kalenderdatei',
  'paper.linkHint': 'Leer lassen: Dann enthalten die Codes auf dem Blatt die Tage selbst.',

  'calendar.file': 'Eine Datei zum Einlesen',
  'calendar.fileWhat':
    'Jeder Kalender nimmt sie. Hat sich der Plan geändert, noch einmal einlesen: Dieselben Arbeiten behalten ihre Termine.',
  'calendar.when': 'Arbeiten stehen',
  'calendar.when.day': 'für den Tag',
  'calendar.when.time': 'zu einer Uhrzeit',
  'calendar.at': 'Um',
  'calendar.also': 'Auch',
  'calendar.feeding': 'das Füttern, jeden Tag',
  'calendar.take': 'Kalenderdatei mitnehmen',
  'calendar.subscribe': 'Ein Link zum Abonnieren',
  'calendar.noServer':
    'Das Logbuch liegt auf diesem Gerät, und einen Server gibt es nicht: Ein Kalender kann niemanden fragen. Stattdessen die Datei nehmen.',
  'calendar.here': 'Ein Kalender auf dem Rechner, auf dem der Server läuft, liest diese Adresse:',
  'calendar.private':
    'Ein Telefon braucht einen eigenen privaten Link. Wer ihn hat, kann den Plan lesen; ein neuer Link beendet den alten, und er lässt sich ganz beenden.',
  'calendar.getLink': 'Privaten Link holen oder beenden',
  'calendar.thisComputerOnly':
    'Dieser Server antwortet nur diesem Rechner. Für das Heimnetz geöffnet, gibt er auch Telefonen private Links.',
  'calendar.cloud':
    'Ein Kalenderdienst im Internet erreicht keinen Rechner zu Hause. Für einen solchen die Datei einlesen.',
};
