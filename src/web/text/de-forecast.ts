/** Words of the supply screen that were added to it, in German. */
export const deForecast = {
  'whatIf.rough': 'Eine erste Skizze; die volle Rechnung läuft.',
  'whatIf.exact': 'Voll durchgerechnet.',
} as const;
