/** German sentences about lines. */
import { type LineTexts, percentOf } from './catalogue.ts';

export const de: LineTexts = {
  sentences: {
    'mix-same-mutation': ({ first, second }) =>
      `${first} und ${second} tragen dieselbe Mutation: Ihre Nachkommen können nicht fliegen.`,
    'mix-same-mutation-do': () => 'Mischen schadet der Flugunfähigkeit nicht; beide Eltern aufschreiben.',
    'mix-fliers': ({ first, second, worstShare }) =>
      `${first} und ${second} haben jeweils die Wildform dessen, was dem anderen fehlt. Ihre Nachkommen fliegen: bis zu ${percentOf(worstShare)} des Bechers.`,
    'mix-keep-apart': () => 'In getrennten Bechern halten.',
    'mix-throw-out': () => 'Ist es schon geschehen: den Becher wegwerfen und aus einem reinen neu beginnen.',
    'mix-unknown': ({ first, second, worstShare }) =>
      `Niemand weiß, ob ${first} und ${second} dieselbe Mutation tragen. Wenn nicht, fliegen bis zu ${percentOf(worstShare)} des Bechers.`,
    'mix-find-out': () =>
      'Um es herauszufinden: ein paar jungfräuliche Weibchen des einen mit Männchen des anderen in einen eigenen Becher. Jeder geflügelte Nachkomme heißt: zwei Mutationen.',
    'mix-two-species': ({ first, second }) =>
      `${first} und ${second} kreuzen sich nicht, es entstehen also keine Flieger; doch der schnellere übernimmt den Becher.`,
    'mix-sort-by-eye': () =>
      'Ist es schon geschehen: neue Becher aus nach Augenschein sortierten Fliegen ansetzen und eine Generation später noch einmal sortieren.',
    'rescue-empty': () => 'Alle erwachsenen Fliegen aus dem Becher klopfen. Die geflügelten töten.',
    'rescue-empty-why': () =>
      'Weibchen, die schon da sind, können zwei Wochen lang Samen eines geflügelten Männchens tragen.',
    'rescue-virgins': ({ hours, females, males }) =>
      `Innerhalb von ${hours} Stunden die seither geschlüpften flugunfähigen Weibchen mit flugunfähigen Männchen nehmen, ${females} und ${males} in einen neuen Becher. Wiederholen, solange der Becher gibt; dann einfrieren.`,
    'rescue-virgins-why': ({ hours }) =>
      `Weibchen paaren sich bei dieser Temperatur in den ersten ${hours} Stunden nicht. Wer nicht fliegen kann, trägt keine Wildform eines rezessiven Gens.`,
    'rescue-check': ({ flies }) =>
      `Von jedem neuen Becher ${flies} Fliegen ansehen, ehe er Gründer gibt. Kann eine fliegen: den Becher wegwerfen.`,
    'rescue-check-why': ({ cleanShare }) => `Ist keine dabei, ist er mit ${percentOf(cleanShare)} sauber.`,
    'unmix-pairs': ({ pairs, hours }) =>
      `${pairs} Becher mit je einem Paar ansetzen: ein jungfräuliches Weibchen, innerhalb von ${hours} Stunden genommen, und ein Männchen, beide vom Aussehen des gewünschten Stamms.`,
    'unmix-pairs-why': ({ pairs, cleanShare, anyShare }) =>
      `Jedes Paar ist mit ${percentOf(cleanShare)} sauber; von ${pairs} ist es eines mit ${percentOf(anyShare)}.`,
    'unmix-sons': ({ sons }) =>
      `${sons} Söhne jedes Paars einzeln mit jungfräulichen Weibchen des anderen Stamms, rein, zusammensetzen (Testkreuzung).`,
    'unmix-sons-why': () => 'Trägt ein Sohn die andere Mutation, ist die Hälfte seiner Nachkommen flugunfähig.',
    'unmix-look': ({ offspring }) =>
      `Von jedem Sohn ${offspring} Nachkommen ansehen. Die Paare behalten, deren Söhne alle nur Flieger hatten.`,
    'unmix-look-why': ({ offspring, seenShare }) =>
      `Unter ${offspring} Nachkommen verrät sich ein Träger mit ${percentOf(seenShare)}.`,
    'line-refresh': ({ lossShare }) =>
      `${percentOf(lossShare)} der Vielfalt sind verloren: Fliegen derselben Mutation aus einer anderen Linie dazunehmen, nach der Quarantäne.`,
    'line-more-founders': ({ lossShare, size, generations }) =>
      `${percentOf(lossShare)} der Vielfalt sind verloren; mit ${size} wirksamen Gründern ist in etwa ${generations} Generationen aufzufrischen.`,
    'line-fine': ({ lossShare, size }) =>
      `${percentOf(lossShare)} der Vielfalt sind verloren; ${size} wirksame Gründer halten den Rest gut.`,
    'backup-enough': ({ cups, lostShare }) => `${cups} Becher gehen mit ${percentOf(lostShare)} zugleich verloren.`,
    'backup-elsewhere': () =>
      'An einem Ort genügt keine Zahl von Bechern: einen in einem anderen Raum halten, auf anderem Nährbrei, an einem anderen Tag angesetzt.',
    'quarantine-apart': () =>
      'Abseits der anderen auf ein trockenes Tablett stellen. Zuletzt anfassen, dann Hände und Werkzeug waschen.',
    'quarantine-look': ({ generation }) =>
      `Auf Milben, Schimmel und geflügelte Fliegen sehen; saubere Fliegen in einen frischen Becher setzen (Generation ${generation}), den alten einfrieren.`,
    'quarantine-done': () => 'Noch einmal nachsehen. Sauber: Er darf zu den anderen.',
    'part-by-date': ({ days, early }) =>
      `In einem Becher mit beiden sind die Fliegen der ersten ${days} Schlupftage ${early}: daraus dessen Becher ansetzen.`,
    'part-clear': ({ late }) =>
      `Sie bis dahin täglich abnehmen; für ${late} später geschlüpfte nehmen, nach Augenschein.`,
    'part-by-eye': () =>
      'Gekühlte Fliegen nach Größe und Farbe in eigene Becher sortieren und eine Generation später noch einmal nachsehen.',
    'wings-unknown': () =>
      'Keine Quelle sagt, was Wärme bei diesem Stamm ändert. Geflügelte herausnehmen und getrennt halten.',
    'wings-unknown-rear': () =>
      'Einen Becher aus flugunfähigen bei 20 bis 24 °C aufziehen und dessen Nachkommen ansehen.',
    'wings-cool': () => 'Noch nicht aussortieren: die Becher auf 20 bis 24 °C kühlen.',
    'wings-look-again': () =>
      'Fliegen ansehen, die im Kühlen aufgewachsen sind. Flügel wie früher: Es war die Wärme oder das Futter. Weiter geflügelt: wie einen Fremden in der Linie behandeln.',
    'wings-stranger': () =>
      'Bei dieser Temperatur bleiben die Flügel der Mutante kurz: eine geflügelte Fliege wie einen Fremden in der Linie behandeln.',
    'two-species-here': ({ winner }) => `Wer sich schneller vermehrt, übernimmt den Becher. Hier ist das ${winner}.`,
    'winged-warmth': ({ temperatureC }) =>
      `Sie wuchs bei ${Number(temperatureC).toFixed(0)} °C auf; dort werden die Flügel dieser Mutante länger, und sie bleibt doch Mutante.`,
    'winged-food': () =>
      'Methylparaben im Nährbrei macht die Flügel dieser Mutante länger, bei Männchen mehr; Mutante bleibt sie doch.',
    'winged-stranger': () =>
      'Eine geflügelte Fliege in einer flugunfähigen Linie ist höchstwahrscheinlich ein Fremder, und ihre Wildform des Gens bleibt für immer, wenn man sie nicht herausnimmt.',
    'winged-isolate': () =>
      'Den Becher wegwerfen, wenn es einen anderen dieser Linie gibt; sonst absondern und den Schritten folgen.',
    'mites-near': () => 'Milben laufen von Becher zu Becher und reiten auf Fliegen und Werkzeug.',
    'mould-near': () => 'Schimmel breitet sich mit Sporen aus und mit Fliegen, die umgesetzt werden.',
    'near-throw-out': () => 'Den Becher geschlossen wegwerfen und keine Gründer daraus nehmen.',
    'near-look': () =>
      'Die Becher einen Kontakt weiter genau ansehen, ehe sie Gründer geben; getrennt halten, bis sie sauber sind.',
    'spread-split': () => 'Ihre Becher stehen an mehr als einem Ort und stammen von mehr als einem Tag.',
    'spread-hangs': ({ oneCup, onePlace, oneDay }) => {
      const shared = [
        oneCup ? 'einem Becher' : '',
        onePlace ? 'einem Ort' : '',
        oneDay ? 'der Arbeit eines Tages' : '',
      ];
      return `Die Linie hängt an ${shared.filter((s) => s !== '').join(' und ')}: einen Ersatzbecher anderswo halten, an einem anderen Tag auf anderem Nährbrei angesetzt.`;
    },
  },
  assumptions: {
    'as named': 'wie benannt',
    'same mutation': 'beide tragen dieselbe Mutation',
    'two mutations': 'zwei verschiedene Mutationen, keine auf dem X',
    'two mutations, one on the X': 'zwei verschiedene Mutationen, eine unbekannte auf dem X',
    'one wild male': 'ein wildes Männchen unter den Gründern, nichts getan',
  },
};
