/** Die Rechnung hinter jeder Zahl in einfachen Worten, auf Deutsch. */
import type { enWhy } from './en-why.ts';
import type { Message } from './message.ts';

export const deWhy: Record<keyof typeof enWhy, Message> = {
  'why.open': 'Warum',
  'why.today.onHand': {
    one: 'Die Fliegen, die in einem Becher leben sollten: {cups}. Gerechnet aus seinen Gründern, seiner Wärme und dem, was Sie über ihn notiert haben. Die Zahl ist die Mitte aller Durchläufe; neun von zehn liegen zwischen {low} und {high}.',
    other:
      'Die Fliegen, die in {count} Bechern leben sollten: {cups}. Jeder ist aus seinen Gründern, seiner Wärme und dem gerechnet, was Sie über ihn notiert haben. Die Zahl ist die Mitte aller Durchläufe; neun von zehn liegen zwischen {low} und {high}.',
  },
  'why.today.wanted': 'Was die Fütterungen von heute von diesem Stamm brauchen: {feedings}.',
  'why.today.wantedNone': 'Heute steht keine Fütterung mit diesem Stamm mehr aus.',
  'why.culture.flies': 'Die Fliegen jetzt',
  'why.culture.made':
    '{founders} Gründer auf {g} g Medium, vor {days} Tagen: Die Bücher sagen, was daraus bei der Wärme seines Orts wird.',
  'why.culture.told':
    'Ihre Kontrollen ({looks}) und Ernten ({harvests}, {taken} Fliegen) haben es dann verschoben, und was genommen wurde, fehlt darin. Die Zahl ist die Mitte aller Durchläufe; neun von zehn liegen zwischen {low} und {high}.',
  'why.culture.next':
    'Die Bücher geben für jedes das Alter bei der Wärme seines Orts; was Sie gesehen haben, verschiebt das eigene Tempo dieses Bechers. Der Tag ist die Mitte aller Durchläufe, neun von zehn liegen in der Spanne.',
  'why.culture.out':
    'Weggeworfen wird er, wenn kaum noch Fliegen kommen, spätestens aber in dem Alter, in dem Milben und Schimmel gewinnen.',
  'why.forecast.noShort': 'Der Anteil von {n} Durchläufen, in denen jede Fütterung dieser Wochen genug Fliegen fand.',
  'why.forecast.firstRisky':
    'Der erste Tag, an dem weniger als {asked} der Durchläufe genug hatten. Wie sicher ein Tag sein soll, wählen Sie in den Einstellungen.',
  'why.forecast.run':
    'Von den Durchläufen mit einem knappen Tag die längste Folge knapper Tage: ihr Mittel, und worin 19 von 20 bleiben.',
  'why.plan.worst': 'Der Tag, an dem die wenigsten von {n} Durchläufen genug Fliegen hatten.',
  'why.plan.short':
    'Tage mit zu wenigen Fliegen in {weeks} Wochen, im Mittel aller Durchläufe. Die meisten haben keinen, wenige mehrere.',
  'why.plan.bought':
    'Das Mittel aller Durchläufe: was jetzt bestellt wird, und was ein Durchlauf kaufen musste, wenn eigene Becher ausfielen.',
  'why.plan.bound':
    'So viele Becher braucht es mindestens, um alle zu füttern, selbst wenn nie einer ausfiele. Genau ausgerechnet, als ganzzahliges Programm.',
  'why.plan.certain':
    'Nach Ihren Regeln und ohne jede Ungewissheit wären es {certain}; was der Plan darüber hinaus braucht, ist der Preis des Nichtwissens.',
  'why.plan.homeGrown':
    'Der erste Tag, an dem aus einem ab jetzt angesetzten Becher Fliegen kommen könnten, bei der Wärme seines Orts. Bis dahin füttern Becher, die schon stehen, oder gekaufte.',
  'why.plan.spans': 'Die Chance, dass niemand zu kurz kommt',
  'why.plan.groups':
    'Jede Chance ist der Anteil von {n} Durchläufen. Eine Ration, die spät kommt, aber in den Tagen, die eine Gruppe warten kann, gilt nicht als verpasst.',
  'why.animals.week': 'Die kommenden sieben Tage aller Gruppen, zusammengezählt: {groups}.',
  'why.animals.group': {
    one: '{count} Tier, etwa {flies} Fliegen bei jeder von {feedings} Fütterungen der kommenden sieben Tage.',
    other: '{count} Tiere, je etwa {flies} Fliegen bei jeder von {feedings} Fütterungen der kommenden sieben Tage.',
  },
  'why.animals.ratio':
    'Calcium und Phosphor in den Fliegen der Woche, wie an Fliegen gemessen, und im Pulver Ihres Plans, als würde alles gefressen: Milligramm zu Milligramm.',
  'why.ledger.fliesPerCup':
    'Fliegen, die Sie als genommen notiert haben, aller beendeten Becher, durch die Zahl dieser Becher.',
  'why.ledger.mediumPerFly': 'Das Medium der beendeten Becher durch die Fliegen, die aus ihnen genommen wurden.',
  'why.ledger.costPer100':
    'Was in die beendeten Becher kam, zu Ihren Preisen, auf hundert genommene Fliegen. Gekaufte Becher zählen hier nichts.',
  'why.larder':
    'Jede Menge wie zuletzt gezählt, weniger was seither gemischt wurde, durch das, was ein Becher nach dem Rezept braucht. Ein Zeichen ist ein Becher.',
  'why.mix.cost':
    'Ihre Preise für das, was hineinkommt, mit dem, was am Topf hängen bleibt; Fliegen je hundert, wie Ihre beendeten Becher sie gaben.',
  'why.strains.of': '{strain}: Tage und Fliegen',
  'why.strains':
    'Ein heute angesetzter Becher mit Ihren üblichen Gründern und Ihrem Medium, bei {degrees} in {place}: nach den Büchern, mit den Berichtigungen, die Sie diesem Stamm gaben.',
  'why.lines.generations': 'Der längste Weg von einem lebenden Becher zurück über die Becher, die ihm Gründer gaben.',
  'why.lines.left':
    'Vom lebenden Becher mit der geringsten: Jede Generation verliert einen Teil von zweimal ihren wirksamen Gründern (Wright 1931), und Becher einer Linie teilen, was sie verloren haben.',
  'why.lines.count': 'Im Logbuch gezählt unter den Bechern dieser Linie, die nicht beendet sind.',
  'why.warmth':
    'Die Tage voraus beginnen bei der letzten Ablesung und gehen zurück zu dem, was für die Jahreszeit üblich ist; die Spanne hält neun von zehn Tagen und wird so weit, wie Ihr Thermometer abwich.',
  'why.lifecycle':
    'Die Raten der Bücher für Eiablage, Wachsen und Sterben bei dieser Wärme, mit weniger von jedem Weibchen, je mehr Gründer sich auf dem Medium drängen; jedes Mal wird die Hälfte der Fliegen genommen. Von Ihrem Logbuch ist nichts darin.',
};
