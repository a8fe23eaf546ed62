/** Words of the screen that shows the life of a cup, in German. */
export const deLifecycle = {
  'screen.lifecycle': 'Leben eines Bechers',
  'more.lifecycle': 'Was Wärme, Gründer und Ernten aus einem Becher machen',
  'culture.lifecycle': 'Was sonst aus so einem Becher werden könnte',
  'life.dayZero': 'Tag 0',
  'life.inTheCup': 'Fliegen im Becher',
  'life.upTo': 'bis zu {count}',
  'life.upToOf': 'bis {count}; ohne Entnahme {alone}',
  'life.leftAlone': 'Fliegen, wenn keine genommen würden',
  'life.taken': 'Fliegen genommen',
  'life.spentLine': 'verbraucht: wegwerfen',
  'lifecycle.lead':
    'Bewegen Sie die Regler: Das Bild zeigt, was die Bücher von einem Becher erwarten, von den Gründern bis zum Ende.',
  'lifecycle.leadCup':
    '{cup}, wie er angesetzt wurde, nach den Büchern. Die Regler zeigen, was aus einem solchen Becher würde.',
  'lifecycle.backToCup': 'Zurück zu {cup}',
  'lifecycle.settings': 'Wie der Becher angesetzt und gehalten wird',
  'lifecycle.strain': 'Fliegenart',
  'lifecycle.melanogaster': 'melanogaster',
  'lifecycle.hydei': 'hydei',
  'lifecycle.temperature': 'Im Becher',
  'lifecycle.founders': 'Gründer',
  'lifecycle.medium': 'Nährbrei',
  'lifecycle.harvest': 'Die Hälfte der Fliegen genommen',
  'lifecycle.everyDays': { one: 'jeden Tag', other: 'alle {count} Tage' },
  'lifecycle.summary':
    'Erste Fliegen an Tag {first}, die meisten an Tag {peak}, verbraucht an Tag {spent}. Etwa {flies} Fliegen schlüpfen, in neun von zehn Bechern zwischen {low} und {high}.',
  'lifecycle.picture': 'Eier, Larven, Puppen und Fliegen über die Tage eines Bechers.',
  'lifecycle.takenFlies': 'Genommen',
  'lifecycle.mediumLeft': 'Nährbrei übrig',
  'lifecycle.worth': 'Gut zu wissen',
  'lifecycle.best': 'Etwa {best} Gründer genügen: {few} gäben {fewFlies} Fliegen, {many} gäben {manyFlies}.',
  'lifecycle.founderWindow': 'Gute Gründer gibt er von Tag {from} bis Tag {until}.',
  'lifecycle.mass': 'Eine Fliege wiegt im Mittel {mg} mg: {perGram} auf ein Gramm.',
  'lifecycle.sexes': 'Weibchen schlüpfen etwa {hours} Stunden vor den Männchen.',
  'lifecycle.failing':
    'Von hundert solchen Bechern misslingen vorher etwa {count}. Milben, die am Anfang hineinkamen, sind bis Tag {mites} eine Plage; werfen Sie den Becher spätestens an Tag {out} weg, was immer er noch gibt.',
  'lifecycle.books':
    'Das sind Werte aus Büchern und gängiger Praxis. Ihre Becher sind anders: Was Ihr Logbuch gelehrt hat, steht unter „Gelerntes“.',
  'lifecycle.nothing': 'Bei dieser Wärme wird aus keinem Ei eine Fliege. Üblich sind {low} bis {high}.',
} as const;
