/** What the plan's screen says beside the calendar, in English. */
export const enPlan = {
  'plan.changed': 'What changed',
  'plan.changedReckoning': 'Comparing with yesterday’s plan…',
  'plan.changedNothing': 'No firm job changed since yesterday’s plan.',
  'plan.changedDay': 'Nothing that the logbook says moved much; the day moved on.',
  'plan.compare': 'Side by side',
  'plan.compareAbout':
    'What more animals, another season, a week away or a lost cup would do, and what your own rules cost. Each is planned anew in the same simulated worlds, which takes a minute or two.',
  'plan.compareNow': 'Compare',
  'plan.comparing': 'Planning each of them…',
  'plan.compareCups': '{n} cups',
  'plan.compareSessions': '{n} sessions',
  'plan.compareCost': '{n} {currency} by what work costs you',
  'plan.compareHours': 'about {n} h of work',
  'plan.compareWorst': 'worst day {chance}',
  'plan.rules': 'What your rules cost in a quarter',
  'plan.rulesNow': 'What do my rules cost?',
  'plan.secondBest': 'The best plan of another rhythm: {title}. {verdict} {cost} {currency}, against {best}.',
  'plan.span': {
    one: '{chance} chance of no short day in the coming week',
    other: '{chance} chance of no short day in {count} weeks',
  },
  'plan.shortSize': 'If it comes to that, on average {share} of a day’s flies are missing, for {days} days',
  'plan.cannotWait': 'can’t wait',
  'plan.canWait': { one: 'can wait a day', other: 'can wait {count} days' },
  'plan.groupWorst': 'worst day {chance}, {day}',
  'plan.groupSafe': 'never short in any simulated world',
} as const;
