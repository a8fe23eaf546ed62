/** German: steps of work, cautions, and advice on moisture. */
import type { Catalogue } from './catalogue.ts';
import { decimal } from './de-number.ts';

export const steps: Catalogue['steps'] = {
  'clear-bench': () =>
    'Hände waschen, Arbeitsfläche abwischen. Saubere Becher, Deckel, Etiketten und ein Tuch bereitlegen.',
  'weigh-dry': ({ cups }) => `Die trockenen Zutaten für ${cups} Becher abwiegen und vermischen.`,
  cook: ({ boilMinutes }) =>
    `Die Mischung ins Wasser rühren, aufkochen und ${boilMinutes} Minuten leise kochen lassen, dabei bis zum Boden rühren.`,
  soak: ({ soakMinutes }) =>
    `Heißes Wasser auf die Mischung gießen, umrühren und ${soakMinutes} Minuten quellen lassen.`,
  'add-preservative': ({ amount, unit, preservative, belowC }) =>
    `Vom Herd nehmen, unter ${belowC} °C: ${decimal(amount)} ${unit} ${preservative} einrühren.`,
  'add-acid': ({ amount, unit, preservative, belowC }) =>
    `Zuletzt, unter ${belowC} °C: ${decimal(amount)} ${unit} ${preservative} in den Nährbrei geben (nie umgekehrt) und umrühren.`,
  fill: ({ cups, mediumMassG }) => `${cups} Becher füllen, je ${mediumMassG} g, 2 bis 3 cm hoch.`,
  'cover-and-cool': ({ coolToC }) =>
    `Die Becher mit einem sauberen Tuch abdecken, damit Dampf hinaus und keine Fliege hinein kommt, und auf ${coolToC} °C abkühlen lassen.`,
  'check-moisture': () =>
    'Den Nährbrei berühren: Er soll feucht sein und beim Kippen halten. Stehendes Wasser abtupfen, Festes anfeuchten.',
  'live-yeast': ({ grains }) => `Auf jeden Becher wenig Trockenhefe streuen: etwa ${grains} Körnchen, nicht mehr.`,
  'climbing-material': () =>
    'Saubere, unbehandelte Kletterhilfe (Holzwolle, Kaffeefilter, Karton) in den Nährbrei stellen.',
  'knock-down': ({ order }) =>
    `Den Becher mit den Gründern auf eine Unterlage klopfen, sodass die Fliegen fallen, oder einige Minuten kühlen.${order === '' ? '' : ` Becher in dieser Reihenfolge öffnen, junge vor alten: ${order}.`}`,
  'tap-in-founders': ({ founders, strain }) =>
    `Etwa ${founders} erwachsene ${strain}, beide Geschlechter, auf die trockene Seite des Bechers klopfen.`,
  'close-lid': ({ holeMm }) =>
    `Deckel schließen. Luft muss durch, Fliegen und Milben nicht: Stoff oder Filterpapier, oder Löcher unter ${decimal(holeMm)} mm.`,
  label: () => 'Etikett aufkleben: Nummer, Stamm, Ansatztag, erste Fliegen, Wegwerftag.',
  place: ({ warmestC }) =>
    `Die Becher an ihren Platz stellen, nicht in die Sonne, nie direkt auf eine Heizmatte, unter ${warmestC} °C.`,
  'next-day-look': () =>
    'Am nächsten Tag nachsehen: Gründer leben und klettern, kein stehendes Wasser, kein Geruch. Notieren, was zu sehen ist.',
  'end-close-tight': () => 'Den Becher dicht verschließen; nicht in der Wohnung öffnen.',
  'end-freeze': ({ hours, atC }) => `${hours} Stunden bei etwa ${decimal(atC)} °C einfrieren.`,
  'end-bag-and-bin': () => 'In eine Tüte leeren, die Tüte verschließen und in den Müll geben.',
  'end-bin-everything': () =>
    'Den ganzen Becher mit Deckel und Kletterhilfe in einer verschlossenen Tüte in den Müll geben. Nichts davon wiederverwenden.',
  'end-empty-and-wash': () =>
    'Becher und Deckel mit heißem Wasser und Seife waschen und gut spülen. Kein Insektenmittel, kein Duftreiniger.',
  'end-dry': () => 'Über Nacht trocknen lassen.',
  'end-wipe-shelf': () => 'Das Regal mit heißer Seifenlauge abwischen, Hände waschen, die Nachbarbecher durchsehen.',
  'end-local-rules': () => 'Abfallregeln sind verschieden: nachsehen, was am Ort gilt.',
};

export const cautions: Catalogue['cautions'] = {
  'hot-medium': 'Heißer Nährbrei verbrüht und klebt: lange Ärmel, Topf mit Griff, kein Kind daneben.',
  'boil-over':
    'Stärke kocht plötzlich über. Kleine Hitze, rühren; in der Mikrowelle kurze Stöße und eine große Schüssel.',
  'flammable-stock': 'Die Stammlösung ist fast nur Alkohol: ohne Hitze zugeben, keine Flamme in der Nähe, Fenster auf.',
  'corrosive-acid':
    'Konzentrierte Säure verätzt Haut und Augen: Handschuhe, Schutzbrille, offenes Fenster. Zu Hause ist Essig die sicherere Wahl.',
  'dose-high': 'Mehr Konservierung ist nicht besser: über der üblichen Menge wachsen Larven langsam oder sterben.',
  mould: 'Nie aus einem schimmligen Becher füttern und ihn nicht in der Wohnung öffnen.',
  allergy:
    'Staub von Hefe, Schimmel und Fliegen kann Allergie und Asthma auslösen: lüften, Maske tragen, bei Pfeifen im Atem aufhören.',
  'carbon-dioxide': 'Kohlendioxid und Trockeneis verdrängen die Atemluft: lüften, Trockeneis nie einschließen.',
  chilling: 'Nur Minuten kühlen: Fliegen erwachen in einer halben Minute, lange Kälte schadet ihnen.',
  'tight-lid': 'Hefe macht Gas: warmen Nährbrei oder einen arbeitenden Becher nie dicht verschließen.',
  'treated-material':
    'Kein behandeltes Papier, Insektenmittel, Flohmittel oder Milbenspray bei den Fliegen: Tiere fressen mit, was daran haftet.',
  children: 'Kochen, Säuren und Alkohol sind Arbeit für Erwachsene.',
  'heat-mat':
    'Nur mit Thermostat heizen, Fühler am Becher. Über 28 °C werden Männchen unfruchtbar und Becher brechen zusammen.',
  escapes: 'Flugunfähige Fliegen klettern: über einem Tablett arbeiten und jeden Becher sofort schließen.',
  'never-release': 'Fliegen nie freilassen, nie lebend kompostieren oder herunterspülen.',
  'local-rules': 'Regeln für Haltung, Versand und Einfuhr sind verschieden: die des eigenen Landes prüfen.',
  'freeze-first': 'Vor dem Wegwerfen einfrieren, damit nichts Lebendes das Haus verlässt.',
  mites: 'Milben reisen an Händen und Werkzeug: junge Becher vor alten anfassen, einen Becher mit Milben wegwerfen.',
  vet: 'Mengen sind Anhaltspunkte. Nimmt ein Tier ab oder frisst nicht, zu einem kundigen Tierarzt gehen.',
  'wash-hands': 'Nach dem Umgang mit Tieren und Bechern Hände waschen.',
};

export const advice: Catalogue['advice'] = {
  runs: 'Der Nährbrei läuft, wenn man den Becher kippt.',
  'shines-and-sticks': 'Die Oberfläche glänzt und Fliegen kleben fest.',
  'moist-and-holds': 'Er ist feucht und hält beim Kippen.',
  firm: 'Er ist fest und fühlt sich trocken an.',
  'cracks-from-wall': 'Er ist gerissen und löst sich von der Wand.',
  'add-dry-mix': 'Einen Löffel Trockenmischung einrühren und quellen lassen.',
  'blot-with-paper': 'Die Oberfläche mit einfachem Küchenpapier abtupfen.',
  'stand-open-under-cloth': 'Eine Stunde nur unter einem Tuch, ohne Deckel, stehen lassen.',
  'more-climbing-material': 'Trockene Kletterhilfe dazugeben, damit Fliegen von der Oberfläche wegkommen.',
  'drip-boiled-water': 'Abgekochtes, kühles Wasser an den Rand tropfen, täglich einen Teelöffel.',
  'cover-holes-partly': 'Den Deckel halb abdecken, damit es langsamer trocknet.',
  'move-from-heat': 'Weg von Wärme und Zugluft stellen.',
  'use-flies-and-restart': 'Die vorhandenen Fliegen nutzen und einen neuen Becher ansetzen.',
};
