/** German for what the log has taught, for cups that stray and for notes in doubt. */
export const deLearning: Record<string, string> = {
  '{0} to {1} %': '{0} bis {1} %',
  '{0} % less to {1} % more': '{0} % weniger bis {1} % mehr',
  'Your cups run {0} % quicker than the books ({1}).': 'Ihre Becher laufen {0} % schneller als die Bücher ({1}).',
  'Your cups run {0} % slower than the books ({1}).': 'Ihre Becher laufen {0} % langsamer als die Bücher ({1}).',
  'Your cups run at the pace of the books ({0}).': 'Ihre Becher laufen im Tempo der Bücher ({0}).',
  'From the days on which larvae, pupae and flies were first seen, and from when flies came, at the warmth that the log gives; a wrong thermometer goes in here.':
    'Aus den Tagen, an denen Larven, Puppen und Fliegen zuerst gesehen wurden, und daraus, wann Fliegen kamen, bei der Wärme, die im Logbuch steht; ein falsches Thermometer geht hier ein.',
  'Your cups give {0} % more flies than the books ({1}), as you count them.':
    'Ihre Becher geben {0} % mehr Fliegen als die Bücher ({1}), so wie Sie zählen.',
  'Your cups give {0} % fewer flies than the books ({1}), as you count them.':
    'Ihre Becher geben {0} % weniger Fliegen als die Bücher ({1}), so wie Sie zählen.',
  'Your cups give as many flies as the books ({0}), as you count them.':
    'Ihre Becher geben so viele Fliegen wie die Bücher ({0}), so wie Sie zählen.',
  'From counts, words and harvests, those of emptied and empty cups too; who counts high reads high here.':
    'Aus Zählungen, Worten und Ernten, auch denen geleerter und leerer Becher; wer hoch zählt, liest hier hohe Werte.',
  'no recipe noted': 'ohne Rezept',
  'no place noted': 'ohne Platz',
  'Each generation gives {0} % more flies than the one before ({1}).':
    'Jede Generation gibt {0} % mehr Fliegen als die vorige ({1}).',
  'Each generation gives {0} % fewer flies than the one before ({1}).':
    'Jede Generation gibt {0} % weniger Fliegen als die vorige ({1}).',
  'Each generation gives as many flies as the one before ({0}).':
    'Jede Generation gibt so viele Fliegen wie die vorige ({0}).',
  'From cups of different generations of the same lines; a decline of 2 % a generation is not surprising before anything is known.':
    'Aus Bechern verschiedener Generationen derselben Linien; bevor etwas bekannt ist, überrascht ein Rückgang um 2 % je Generation nicht.',
  'Twice the founders gives {0} % more flies than the books say ({1}).':
    'Doppelt so viele Gründer geben {0} % mehr Fliegen, als die Bücher sagen ({1}).',
  'Twice the founders gives {0} % fewer flies than the books say ({1}).':
    'Doppelt so viele Gründer geben {0} % weniger Fliegen, als die Bücher sagen ({1}).',
  'Twice the founders gives as many flies as the books say ({0}).':
    'Doppelt so viele Gründer geben so viele Fliegen, wie die Bücher sagen ({0}).',
  'From cups that were started with more and with fewer founders; the crowding of the books is allowed for.':
    'Aus Bechern, die mit mehr und mit weniger Gründern angesetzt wurden; die Enge, die die Bücher kennen, ist berücksichtigt.',
  'A cup fails before its time with a chance of {0} % ({1} to {2} %).':
    'Ein Becher fällt mit {0} % Wahrscheinlichkeit vorzeitig aus ({1} bis {2} %).',
  'From cups that ended for mould, mites and the like against those that ran their course; living cups count for the part of their life behind them. Before the first cup, 8 % is taken.':
    'Aus Bechern, die wegen Schimmel, Milben und dergleichen endeten, gegen jene, die zu Ende liefen; lebende zählen mit dem Teil ihres Lebens, der hinter ihnen liegt. Vor dem ersten Becher gelten 8 %.',
  'All cups of a session are lost together with a chance of {0} % ({1} to {2} %).':
    'Alle Becher eines Ansetztages gehen mit {0} % Wahrscheinlichkeit zusammen verloren ({1} bis {2} %).',
  'From sessions of two cups and more that lost all of them, as a bad batch of medium does.':
    'Aus Ansetztagen mit zwei und mehr Bechern, von denen keiner blieb, wie nach einem schlechten Ansatz Brei.',
  'Your cups are of use {0} % longer than the books say ({1}).':
    'Ihre Becher taugen {0} % länger, als die Bücher sagen ({1}).',
  'Your cups are of use {0} % shorter than the books say ({1}).':
    'Ihre Becher taugen {0} % kürzer, als die Bücher sagen ({1}).',
  'Your cups are of use as long as the books say ({0}).': 'Ihre Becher taugen so lange, wie die Bücher sagen ({0}).',
  'From the ages at which cups were ended as spent.': 'Aus dem Alter, in dem Becher als verbraucht beendet wurden.',
  'Two cups started alike differ: one in three strays by more than {0} % in flies ({1} to {2} %).':
    'Zwei gleich angesetzte Becher unterscheiden sich: einer von dreien weicht um mehr als {0} % Fliegen ab ({1} bis {2} %).',
  'From how much cups of one session, recipe and place differ.':
    'Daraus, wie weit Becher eines Ansetztages, Rezepts und Platzes auseinanderliegen.',
  'Your counts are good to about {0} % ({1} to {2} %).': 'Ihre Zählungen stimmen auf etwa {0} % ({1} bis {2} %).',
  'From counts of one cup that follow each other: what births, deaths and harvests between them cannot explain.':
    'Aus aufeinanderfolgenden Zählungen eines Bechers: was Schlüpfen, Sterben und Ernten dazwischen nicht erklären.',
  'One tap gives about {0} flies ({1} to {2}).': 'Ein Klopfen gibt etwa {0} Fliegen ({1} bis {2}).',
  'From {0} harvests of which both taps and flies were written; harvests written in taps alone are read with it.':
    'Aus {0} Ernten, bei denen Klopfen und Fliegen notiert sind; Ernten nur in Klopfen werden damit gelesen.',
  'The log fits: {0} of {1} notes are doubtful.': 'Das Logbuch passt: {0} von {1} Notizen sind zweifelhaft.',
  'The log does not fit: {0}. Take forecasts with care.':
    'Das Logbuch passt nicht: {0}. Vorhersagen mit Vorsicht nehmen.',
  'Every note is held against its own forecast from the notes before it, in six ways; of logs that the model wrote itself, at most 1 in 100 is said not to fit.':
    'Jede Notiz wird auf sechs Arten gegen ihre eigene Vorhersage aus den Notizen davor gehalten; von Logbüchern, die das Modell selbst schrieb, heißt es bei höchstens 1 von 100, es passe nicht.',
  'notes stray further than any band': 'Notizen weichen weiter ab als jedes Band',
  'flies come at other ages than the curve of the books says':
    'Fliegen kommen in anderem Alter, als die Kurve der Bücher sagt',
  'what one note missed, the next ones miss too': 'was eine Notiz verfehlt, verfehlen auch die nächsten',
  'no one pace explains larvae, pupae and flies': 'kein einzelnes Tempo erklärt Larven, Puppen und Fliegen',
  'cups give more and more, or less and less, as time goes by':
    'Becher geben mit der Zeit immer mehr oder immer weniger',
  'too many notes contradict the rest': 'zu viele Notizen widersprechen den übrigen',
  '{0} ({1}); {2}.': '{0} ({1}); {2}.',
  '{0} cups': '{0} Becher',
  '{0} sure, {1} cups': '{0} sicher, {1} Becher',
  '{0} %': '{0} %',
  'over 99 %': 'über 99 %',
  'From cups of both, with session, founders and generation allowed for. Clear means 95 % sure; who looks again after every cup is sure too early now and then.':
    'Aus Bechern von beiden; Ansetztag, Gründer und Generation sind berücksichtigt. Klar heißt zu 95 % sicher; wer nach jedem Becher nachsieht, ist hin und wieder zu früh sicher.',
  '{0} and {1} give alike': '{0} und {1} geben gleich viel',
  '{0} gives {1} % more flies than {2}': '{0} gibt {1} % mehr Fliegen als {2}',
  '{0} and {1} run alike': '{0} und {1} laufen gleich',
  'cups at {0} run {1} % quicker than at {2}': 'Becher am Platz {0} laufen {1} % schneller als am Platz {2}',
  'that is clear': 'das ist klar',
  'no trial of a bearable size would settle it': 'kein Versuch von erträglicher Größe würde es klären',
  'about {0} more cups, half of each and started together, would show a difference of 10 %':
    'etwa {0} weitere Becher, je zur Hälfte und zusammen angesetzt, würden einen Unterschied von 10 % zeigen',
  'about {0} more cups, half of each and started together, would settle it':
    'etwa {0} weitere Becher, je zur Hälfte und zusammen angesetzt, würden es klären',
  flies: 'Fliegen',
  '"none"': '„keine“',
  '"few"': '„wenige“',
  '"some"': '„einige“',
  '"plenty"': '„viele“',
  '"swarming"': '„wimmelnd“',
  'no {0} yet on day {1}; expected near day {2}': 'am {1}. Tag noch keine {0}; erwartet um den {2}. Tag',
  '{0} already on day {1}; expected near day {2}': '{0} schon am {1}. Tag; erwartet um den {2}. Tag',
  '{0} flies': '{0} Fliegen',
  '{0} on day {1}, where {2} to {3} flies were likely': '{0} am {1}. Tag, wo {2} bis {3} Fliegen wahrscheinlich waren',
  'Off course: {0}.': 'Aus der Bahn: {0}.',
  'Likely {0}.': 'Wahrscheinlich: {0}.',
  'Its flies come about {0} days late ({1} to {2}).': 'Seine Fliegen kommen etwa {0} Tage zu spät ({1} bis {2}).',
  'Its flies come about {0} days early.': 'Seine Fliegen kommen etwa {0} Tage zu früh.',
  'It runs as a cup {0} cooler would.': 'Er läuft wie ein um {0} kühlerer Becher.',
  'It runs as a cup {0} warmer would.': 'Er läuft wie ein um {0} wärmerer Becher.',
  'It gives about {0} flies fewer in the coming fortnight ({1}).':
    'In den nächsten zwei Wochen gibt er etwa {0} Fliegen weniger ({1}).',
  'from {0} more to {1} fewer': 'von {0} mehr bis {1} weniger',
  '{0} to {1}': '{0} bis {1}',
  'It gives about {0} flies more in the coming fortnight.':
    'In den nächsten zwei Wochen gibt er etwa {0} Fliegen mehr.',
  'too cool': 'zu kühl',
  'Measure the temperature beside the cup, at night too.': 'Die Temperatur neben dem Becher messen, auch nachts.',
  'warmer than the log says': 'wärmer, als im Logbuch steht',
  'Measure the temperature beside the cup; above {0} flies become sterile.':
    'Die Temperatur neben dem Becher messen; über {0} werden Fliegen unfruchtbar.',
  'too dry': 'zu trocken',
  'Touch the medium: if it has shrunk from the wall, drip a little water on it.':
    'Den Brei berühren: Hat er sich von der Wand gelöst, etwas Wasser darauf tropfen.',
  'too wet': 'zu nass',
  'Look for standing water and drowned flies; add climbing material or blot it.':
    'Nach stehendem Wasser und ertrunkenen Fliegen sehen; Klettermaterial dazugeben oder abtupfen.',
  'too few founders': 'zu wenige Gründer',
  'Compare the founders with what the container takes; start the next cup with more.':
    'Die Gründer mit dem vergleichen, was das Gefäß verträgt; den nächsten Becher mit mehr ansetzen.',
  'old founders': 'alte Gründer',
  'Take founders that emerged within the last ten days.':
    'Gründer nehmen, die in den letzten zehn Tagen geschlüpft sind.',
  mould: 'Schimmel',
  'Look for green, grey or black patches; take a mouldy cup away from the others, closed.':
    'Nach grünen, grauen oder schwarzen Flecken sehen; einen schimmligen Becher geschlossen von den anderen wegstellen.',
  mites: 'Milben',
  'Look at the lid and the rim with a lens for pale moving specks; take the cup away from the others.':
    'Deckel und Rand mit der Lupe nach hellen, sich bewegenden Punkten absuchen; den Becher von den anderen wegstellen.',
  overcrowded: 'zu eng besetzt',
  'Many small flies and soupy medium: start the next cup with fewer founders.':
    'Viele kleine Fliegen und suppiger Brei: den nächsten Becher mit weniger Gründern ansetzen.',
  'flies taken that nobody wrote down': 'entnommene Fliegen, die niemand aufschrieb',
  'Add the harvests that are missing in the log.': 'Die Ernten nachtragen, die im Logbuch fehlen.',
  'planned feedings that were not done': 'geplante Fütterungen, die ausfielen',
  'Strike the feedings that did not happen.': 'Die Fütterungen streichen, die nicht stattfanden.',
  'founders counted with the new flies': 'Gründer, die mit den neuen Fliegen gezählt wurden',
  'Look whether the flies are old and dark or fresh and pale.':
    'Sehen, ob die Fliegen alt und dunkel oder frisch und hell sind.',
  'a note from before the cup was started': 'eine Notiz von vor dem Ansetzen',
  'a day on or after its start': 'ein Tag ab dem Ansetzen',
  'a note from after the cup ended': 'eine Notiz von nach dem Ende des Bechers',
  'a day before its end': 'ein Tag vor seinem Ende',
  '{0} both seen and not seen': '{0} gesehen und nicht gesehen zugleich',
  'one of the two': 'eines von beiden',
  'a count of {0}': 'eine Zählung von {0}',
  '0 or more': '0 oder mehr',
  '{0} flies taken': '{0} Fliegen entnommen',
  '{0} from about day {1}': '{0} etwa ab dem {1}. Tag',
  'no {0} yet on day {1}': 'am {1}. Tag noch keine {0}',
  '{0} seen on day {1}': '{0} am {1}. Tag gesehen',
  'about {0} flies in the cup': 'etwa {0} Fliegen im Becher',
  'a count of {0} on day {1}': 'eine Zählung von {0} am {1}. Tag',
  '{0} on day {1}': '{0} am {1}. Tag',
  'Held against each forecast is what says how many flies a cup held: counts, words, cups emptied, and the first sight of a stage. A harvest that leaves flies behind is not the supply; it says only that there were at least so many.':
    'Gegen jede Vorhersage wird gehalten, was sagt, wie viele Fliegen ein Becher enthielt: Zählungen, Worte, geleerte Becher und das erste Auftreten eines Stadiums. Eine Ernte, die Fliegen übrig lässt, ist nicht der Vorrat; sie sagt nur, dass es mindestens so viele waren.',
  '{0} Each forecast knows what had been recorded by its day.':
    '{0} Jede Vorhersage kennt, was bis zu ihrem Tag aufgeschrieben war.',
  '{0} Most of this log was written long after the day; each forecast knows what had happened by its day.':
    '{0} Der größte Teil dieses Logbuchs wurde lange nach dem Tag geschrieben; jede Vorhersage kennt, was bis zu ihrem Tag geschehen war.',
  '{0} flies taken on day {1}': '{0} Fliegen am {1}. Tag entnommen',
};
