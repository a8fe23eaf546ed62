/** Words of the supply screen that were added to it, in English. */
export const enForecast = {
  'whatIf.rough': 'A first sketch; it is being worked out in full.',
  'whatIf.exact': 'Worked out in full.',
  'part.moreThan': 'more than {chance}',
  'part.lessThan': 'less than {chance}',
  'part.stopped': 'Stopped. Nothing that you wrote is lost.',
  'part.workOut': 'Work it out',
  'part.seconds': '{n} s',
} as const;
