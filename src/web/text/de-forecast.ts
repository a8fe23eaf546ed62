/** Words of the supply screen that were added to it, in German. */
export const deForecast = {
  'whatIf.rough': 'Eine erste Skizze; die volle Rechnung läuft.',
  'whatIf.exact': 'Voll durchgerechnet.',
  'part.moreThan': 'mehr als {chance}',
  'part.lessThan': 'weniger als {chance}',
  'part.stopped': 'Angehalten. Nichts von dem, was Sie eingetragen haben, ist verloren.',
  'part.workOut': 'Ausrechnen',
  'part.seconds': '{n} s',
} as const;
