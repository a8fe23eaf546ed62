/** What the plan's screen says beside the calendar, in German. */
export const dePlan = {
  'plan.changed': 'Was sich geändert hat',
  'plan.changedReckoning': 'Vergleich mit dem gestrigen Plan …',
  'plan.changedNothing': 'Seit dem gestrigen Plan hat sich keine feste Aufgabe geändert.',
  'plan.changedDay': 'Das Logbuch sagt nichts wesentlich Neues; nur der Tag ist weitergerückt.',
  'plan.compare': 'Nebeneinander',
  'plan.compareAbout':
    'Was mehr Tiere, eine andere Jahreszeit, eine Woche fort oder ein verlorener Becher ausmachen würden, und was Ihre Regeln kosten. Jedes wird in denselben simulierten Welten neu geplant; das dauert ein, zwei Minuten.',
  'plan.compareNow': 'Vergleichen',
  'plan.comparing': 'Jedes wird geplant …',
  'plan.compareCups': '{n} Becher',
  'plan.compareSessions': '{n} Arbeitsgänge',
  'plan.compareCost': '{n} {currency} nach Ihren Arbeitskosten',
  'plan.compareHours': 'etwa {n} h Arbeit',
  'plan.compareWorst': 'schlechtester Tag {chance}',
  'plan.rules': 'Was Ihre Regeln im Vierteljahr kosten',
  'plan.rulesNow': 'Was kosten meine Regeln?',
  'plan.secondBest': 'Der beste Plan in anderem Rhythmus: {title}. {verdict} {cost} {currency}, gegenüber {best}.',
  'plan.span': {
    one: '{chance} Chance auf keinen knappen Tag in der nächsten Woche',
    other: '{chance} Chance auf keinen knappen Tag in {count} Wochen',
  },
  'plan.shortSize': 'Kommt es dazu, fehlen im Mittel {share} der Fliegen eines Tages, {days} Tage lang',
  'plan.cannotWait': 'können nicht warten',
  'plan.canWait': { one: 'können einen Tag warten', other: 'können {count} Tage warten' },
  'plan.groupWorst': 'schlechtester Tag {chance}, {day}',
  'plan.groupSafe': 'in keiner simulierten Welt zu kurz gekommen',
} as const;
