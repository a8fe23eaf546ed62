/** German for what is said about lines: mixing, rescue, quarantine, and what hangs on one cup. */
export const deLines: Record<string, string> = {
  '{0} and {1} carry the same mutation: their offspring cannot fly.':
    '{0} und {1} tragen dieselbe Mutation: Ihre Nachkommen können nicht fliegen.',
  'Mixing is safe for flight; note both parents.':
    'Mischen schadet der Flugunfähigkeit nicht; beide Eltern aufschreiben.',
  'Each of {0} and {1} has the wild form of what the other lacks, so their offspring fly: up to {2} of the cup.':
    '{0} und {1} haben jeweils die Wildform dessen, was dem anderen fehlt. Ihre Nachkommen fliegen: bis zu {2} des Bechers.',
  'Keep them in separate cups.': 'In getrennten Bechern halten.',
  'If it has happened: throw the cup out and start again from a pure one.':
    'Ist es schon geschehen: den Becher wegwerfen und aus einem reinen neu beginnen.',
  'Nobody knows whether {0} and {1} carry the same mutation. If they do not, up to {2} of the cup will fly.':
    'Niemand weiß, ob {0} und {1} dieselbe Mutation tragen. Wenn nicht, fliegen bis zu {2} des Bechers.',
  'To find out, put a few virgin females of one with males of the other in a cup of their own: any winged offspring means two mutations.':
    'Um es herauszufinden: ein paar jungfräuliche Weibchen des einen mit Männchen des anderen in einen eigenen Becher. Jeder geflügelte Nachkomme heißt: zwei Mutationen.',
  '{0} and {1} do not cross, so no fliers come of it, but the one that breeds faster takes over the cup.':
    '{0} und {1} kreuzen sich nicht, es entstehen also keine Flieger; doch der schnellere übernimmt den Becher.',
  'If it has happened, start new cups from flies sorted by eye, and sort again a generation later.':
    'Ist es schon geschehen: neue Becher aus nach Augenschein sortierten Fliegen ansetzen und eine Generation später noch einmal sortieren.',
  'Tap every adult out of the cup. Kill the winged ones.':
    'Alle erwachsenen Fliegen aus dem Becher klopfen. Die geflügelten töten.',
  "Females that are there may carry a winged male's sperm, for two weeks.":
    'Weibchen, die schon da sind, können zwei Wochen lang Samen eines geflügelten Männchens tragen.',
  'Within {0} hours take the flightless females that have emerged since, with flightless males, {1} and {2} to a new cup. Repeat as long as the cup gives; then freeze it.':
    'Innerhalb von {0} Stunden die seither geschlüpften flugunfähigen Weibchen mit flugunfähigen Männchen nehmen, {1} und {2} in einen neuen Becher. Wiederholen, solange der Becher gibt; dann einfrieren.',
  'Females do not mate in their first {0} hours at this temperature. A fly that cannot fly carries no wild form of a recessive.':
    'Weibchen paaren sich bei dieser Temperatur in den ersten {0} Stunden nicht. Wer nicht fliegen kann, trägt keine Wildform eines rezessiven Gens.',
  'Look at {0} flies of each new cup before you take founders from it. One that can fly: throw that cup out.':
    'Von jedem neuen Becher {0} Fliegen ansehen, ehe er Gründer gibt. Kann eine fliegen: den Becher wegwerfen.',
  'With none seen, the chance that it is clean is {0}.': 'Ist keine dabei, ist er mit {0} sauber.',
  'Set up {0} cups of one pair each: a virgin female, taken within {1} hours, and a male, both looking like the strain you want.':
    '{0} Becher mit je einem Paar ansetzen: ein jungfräuliches Weibchen, innerhalb von {1} Stunden genommen, und ein Männchen, beide vom Aussehen des gewünschten Stamms.',
  'Each pair is clean with chance {0}; of {1}, one is with {2}.':
    'Jedes Paar ist mit {0} sauber; von {1} ist es eines mit {2}.',
  'Put {0} sons of each pair, singly, with virgin females of the other strain, pure (a test-cross).':
    '{0} Söhne jedes Paars einzeln mit jungfräulichen Weibchen des anderen Stamms, rein, zusammensetzen (Testkreuzung).',
  'A son that carries the other mutation has half his offspring flightless.':
    'Trägt ein Sohn die andere Mutation, ist die Hälfte seiner Nachkommen flugunfähig.',
  'Look at {0} offspring of each son. Keep the pairs none of whose sons gave a flightless fly.':
    'Von jedem Sohn {0} Nachkommen ansehen. Die Paare behalten, deren Söhne alle nur Flieger hatten.',
  'A carrier shows itself among {0} offspring with chance {1}.': 'Unter {0} Nachkommen verrät sich ein Träger mit {1}.',
  '{0} of its variation is gone: bring in flies of the same mutation from another line, after quarantine.':
    '{0} der Vielfalt sind verloren: Fliegen derselben Mutation aus einer anderen Linie dazunehmen, nach der Quarantäne.',
  '{0} of its variation is gone; with {1} effective founders it is time to refresh in about {2} generations.':
    '{0} der Vielfalt sind verloren; mit {1} wirksamen Gründern ist in etwa {2} Generationen aufzufrischen.',
  '{0} of its variation is gone; {1} effective founders keep the rest well.':
    '{0} der Vielfalt sind verloren; {1} wirksame Gründer halten den Rest gut.',
  '{0} cups are lost together with chance {1}.': '{0} Becher gehen mit {1} zugleich verloren.',
  'No number of cups in one place is enough: keep one in another room, on another batch of medium, started on another day.':
    'An einem Ort genügt keine Zahl von Bechern: einen in einem anderen Raum halten, auf anderem Nährbrei, an einem anderen Tag angesetzt.',
  'Stand it away from the others, on a dry tray. Handle it last, then wash hands and tools.':
    'Abseits der anderen auf ein trockenes Tablett stellen. Zuletzt anfassen, dann Hände und Werkzeug waschen.',
  'Look for mites, mould and winged flies; carry clean flies over to a fresh cup (generation {0}), freeze the old one.':
    'Auf Milben, Schimmel und geflügelte Fliegen sehen; saubere Fliegen in einen frischen Becher setzen (Generation {0}), den alten einfrieren.',
  'Look once more. Clean: it may join the others.': 'Noch einmal nachsehen. Sauber: Er darf zu den anderen.',
  'Of a cup started with both, the flies of the first {0} days of emergence are {1}: start its cups from those.':
    'In einem Becher mit beiden sind die Fliegen der ersten {0} Schlupftage {1}: daraus dessen Becher ansetzen.',
  'Clear them daily until then; for {0} take flies that emerge later, sorted by eye.':
    'Sie bis dahin täglich abnehmen; für {0} später geschlüpfte nehmen, nach Augenschein.',
  'Sort chilled flies by size and colour into cups of their own, and look again a generation later.':
    'Gekühlte Fliegen nach Größe und Farbe in eigene Becher sortieren und eine Generation später noch einmal nachsehen.',
  'No source says how warmth changes this strain. Take winged flies out and keep them apart.':
    'Keine Quelle sagt, was Wärme bei diesem Stamm ändert. Geflügelte herausnehmen und getrennt halten.',
  'Rear a cup from flightless ones at {0} to {1} and look again at its offspring.':
    'Einen Becher aus flugunfähigen bei {0} bis {1} aufziehen und dessen Nachkommen ansehen.',
  'Do not cull yet: cool the cups to {0} to {1}.': 'Noch nicht aussortieren: die Becher auf {0} bis {1} kühlen.',
  'Look again at flies that grew up in the cool. Wings as before: it was the warmth or the food. Still winged: treat it as a stranger in the line.':
    'Fliegen ansehen, die im Kühlen aufgewachsen sind. Flügel wie früher: Es war die Wärme oder das Futter. Weiter geflügelt: wie einen Fremden in der Linie behandeln.',
  'At this temperature the mutant keeps its wings short: treat a winged fly as a stranger in the line.':
    'Bei dieser Temperatur bleiben die Flügel der Mutante kurz: eine geflügelte Fliege wie einen Fremden in der Linie behandeln.',
  'The one that breeds faster takes over the cup. Here that is {0}.':
    'Wer sich schneller vermehrt, übernimmt den Becher. Hier ist das {0}.',
  "It grew up at {0}, where this mutant's wings grow longer; such flies are still mutants.":
    'Sie wuchs bei {0} auf; dort werden die Flügel dieser Mutante länger, und sie bleibt doch Mutante.',
  "Methylparaben in its medium lengthens this mutant's wings, in males more; such flies are still mutants.":
    'Methylparaben im Nährbrei macht die Flügel dieser Mutante länger, bei Männchen mehr; Mutante bleibt sie doch.',
  'A winged fly in a flightless line is most likely a stranger, and its wild form of the gene stays for ever unless it is taken out.':
    'Eine geflügelte Fliege in einer flugunfähigen Linie ist höchstwahrscheinlich ein Fremder, und ihre Wildform des Gens bleibt für immer, wenn man sie nicht herausnimmt.',
  'Throw the cup out if you have another of the line; else isolate it and follow the steps.':
    'Den Becher wegwerfen, wenn es einen anderen dieser Linie gibt; sonst absondern und den Schritten folgen.',
  'Mites walk from cup to cup and ride on flies and tools.':
    'Milben laufen von Becher zu Becher und reiten auf Fliegen und Werkzeug.',
  'Mould spreads by spores and by flies that are carried over.':
    'Schimmel breitet sich mit Sporen aus und mit Fliegen, die umgesetzt werden.',
  'Throw the cup out, closed, and take no founders from it.':
    'Den Becher geschlossen wegwerfen und keine Gründer daraus nehmen.',
  'Look closely at the cups one contact away before they give founders; keep them apart until they are clean.':
    'Die Becher einen Kontakt weiter genau ansehen, ehe sie Gründer geben; getrennt halten, bis sie sauber sind.',
  'Its cups stand in more than one place and come from more than one day.':
    'Ihre Becher stehen an mehr als einem Ort und stammen von mehr als einem Tag.',
  'one cup': 'einem Becher',
  'one place': 'einem Platz',
  "one day's work": 'der Arbeit eines Tages',
  'The line hangs on {0}: keep a backup cup elsewhere, started on another day on another batch of medium.':
    'Die Linie hängt an {0}: einen Ersatzbecher anderswo halten, an einem anderen Tag auf anderem Nährbrei angesetzt.',
  'as named': 'wie benannt',
  'the two carry the same mutation': 'beide tragen dieselbe Mutation',
  'two different mutations, none on the X': 'zwei verschiedene Mutationen, keine auf dem X',
  'two different mutations, an unknown one on the X': 'zwei verschiedene Mutationen, eine unbekannte auf dem X',
  'one wild male among the founders, nothing done': 'ein wildes Männchen unter den Gründern, nichts getan',
};
