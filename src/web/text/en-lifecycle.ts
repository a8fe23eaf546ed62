/** Words of the screen that shows the life of a cup. */
export const enLifecycle = {
  'screen.lifecycle': 'Life of a cup',
  'more.lifecycle': 'What warmth, founders and harvests make of a cup',
  'culture.lifecycle': 'What else could become of such a cup',
  'life.dayZero': 'day 0',
  'life.inTheCup': 'flies in the cup',
  'life.upTo': 'up to {count}',
  'life.upToOf': 'up to {count}; if none were taken, {alone}',
  'life.leftAlone': 'flies if none were taken',
  'life.taken': 'flies taken',
  'life.spentLine': 'spent: throw it out',
  'lifecycle.lead':
    'Move the sliders: the picture shows what the books expect of one cup, from its founders to its end.',
  'lifecycle.leadCup':
    '{cup} as it was made, by the books. Move the sliders to see what would become of a cup like it.',
  'lifecycle.backToCup': 'Back to {cup}',
  'lifecycle.settings': 'How the cup is made and kept',
  'lifecycle.strain': 'Kind of fly',
  'lifecycle.melanogaster': 'melanogaster',
  'lifecycle.hydei': 'hydei',
  'lifecycle.temperature': 'In the cup',
  'lifecycle.founders': 'Founders',
  'lifecycle.medium': 'Medium',
  'lifecycle.harvest': 'Half of the flies taken',
  'lifecycle.everyDays': { one: 'every day', other: 'every {count} days' },
  'lifecycle.summary':
    'First flies on day {first}, most on day {peak}, spent on day {spent}. About {flies} flies emerge, between {low} and {high} in nine cups of ten.',
  'lifecycle.picture': 'Eggs, larvae, pupae and flies over the days of a cup.',
  'lifecycle.takenFlies': 'Taken',
  'lifecycle.mediumLeft': 'Medium left',
  'lifecycle.worth': 'Worth knowing',
  'lifecycle.best':
    'About {best} founders are enough: {few} would give {fewFlies} flies, {many} would give {manyFlies}.',
  'lifecycle.founderWindow': 'Good founders come out of it from day {from} to day {until}.',
  'lifecycle.mass': 'A fly weighs {mg} mg in the mean: {perGram} to the gram.',
  'lifecycle.sexes': 'Females come out of their pupae about {hours} hours before males.',
  'lifecycle.failing':
    'Of a hundred such cups about {count} fail before that. Mites that came in at the start are trouble by day {mites}; throw the cup out by day {out}, whatever it still gives.',
  'lifecycle.books':
    'These are values of the books and of common practice. Your own cups differ: what your logbook taught is under “What it learned”.',
  'lifecycle.nothing': 'At this warmth no egg becomes a fly. {low} to {high} is usual.',
} as const;
