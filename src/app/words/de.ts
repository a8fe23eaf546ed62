/** German for every sentence that the rooms say, by its English text. A test finds what is missing. */
import { deLearning } from './de-learning.ts';
import { deLines } from './de-lines.ts';
import { deLogbook } from './de-logbook.ts';

export const de: Record<string, string> = {
  ...deLearning,
  ...deLines,
  ...deLogbook,
  '{0}: {1}': '{0}: {1}',
  '{0} ({1})': '{0} ({1})',
  '{0} × {1}': '{0} × {1}',
  '{0}, {1}': '{0}, {1}',
  'at {0} days it gives hardly any more flies and mites may come; tap its last flies out into a clean holding cup and feed them within {1} days, then freeze it, closed, before it is binned. Write down as a harvest how many came out of it today: without that they are taken to have gone with it.':
    'mit {0} Tagen gibt er kaum noch Fliegen, und Milben können kommen; die letzten Fliegen in einen sauberen Becher klopfen und binnen {1} Tagen verfüttern, dann den Becher geschlossen einfrieren, bevor er in den Müll kommt. Als Ernte aufschreiben, wie viele heute herauskamen: sonst gelten sie als mit ihm weggeworfen.',
  'mites were seen in it; keep it closed and apart, freeze it and bin it, and look at the cups that stood beside it.':
    'darin wurden Milben gesehen; geschlossen und abseits halten, einfrieren und wegwerfen, und die Becher daneben ansehen.',
  'mould was seen in it; do not open it indoors, freeze it closed and bin it.':
    'darin wurde Schimmel gesehen; nicht drinnen öffnen, geschlossen einfrieren und wegwerfen.',
  '{0}: {1} flies, from whatever gives.': '{0}: {1} Fliegen, woher sie zu haben sind.',
  '{0}: {1} flies.': '{0}: {1} Fliegen.',
  '{0}: {1} flies, from {2}.': '{0}: {1} Fliegen, aus {2}.',
  '{0} about {1}': '{0} etwa {1}',
  'Expect about {0} too few.': 'Etwa {0} werden fehlen.',
  'The need is covered; they keep {0} cups of {1} that can found others, as you asked.':
    'Der Bedarf ist gedeckt; sie halten wie gewünscht {0} Becher von {1} bereit, aus denen andere angesetzt werden können.',
  'Put one of them at {0}: all the others stand at {1}.': 'Einen davon nach {0} stellen: alle anderen stehen bei {1}.',
  'At {0} the first flies of {1} come {2} days earlier, about {3}.':
    'Bei {0} kommen die ersten Fliegen von {1} um {2} Tage früher, etwa {3}.',
  'At {0} the first flies of {1} come {2} days later, about {3}: they are held back for when they are wanted.':
    'Bei {0} kommen die ersten Fliegen von {1} um {2} Tage später, etwa {3}: so sind sie da, wenn sie gebraucht werden.',
  'At {0} most flies of {1} come {2} days earlier, about {3}.':
    'Bei {0} kommen die meisten Fliegen von {1} um {2} Tage früher, etwa {3}.',
  'At {0} most flies of {1} come {2} days later, about {3}: they are held back for when they are wanted.':
    'Bei {0} kommen die meisten Fliegen von {1} um {2} Tage später, etwa {3}: so sind sie da, wenn sie gebraucht werden.',
  'Were nothing done, {0} would be short on {1} with a chance of {2}; with the cup moved, of {3} on the worst day.':
    'Wird nichts getan, fehlen am {1} Fliegen von {0}, Wahrscheinlichkeit {2}; mit dem umgestellten Becher sind es am schlechtesten Tag {3}.',
  'Were nothing done, {0} would be short on {1} with a chance of {2}; with the cups moved, of {3} on the worst day.':
    'Wird nichts getan, fehlen am {1} Fliegen von {0}, Wahrscheinlichkeit {2}; mit den umgestellten Bechern sind es am schlechtesten Tag {3}.',
  'less than {0} %': 'weniger als {0} %',
  'Cups to buy in {0} weeks: about {1} fewer.': 'In {0} Wochen zu kaufende Becher: etwa {1} weniger.',
  Monday: 'Montag',
  Tuesday: 'Dienstag',
  Wednesday: 'Mittwoch',
  Thursday: 'Donnerstag',
  Friday: 'Freitag',
  Saturday: 'Samstag',
  Sunday: 'Sonntag',
  'As it is': 'Wie es ist',
  '{0} % more animals': '{0} % mehr Tiere',
  '{0} % fewer animals': '{0} % weniger Tiere',
  '{0} warmer': '{0} wärmer',
  '{0} cooler': '{0} kühler',
  'Away from {0} to {1}': 'Fort von {0} bis {1}',
  '{0} fails today': '{0} fällt heute aus',
  'Work on {0}': 'Arbeit an: {0}',
  'Work only on {0}': 'Arbeit nur an: {0}',
  'Cups {0} times as large': 'Becher {0}-mal so groß',
  'Every day {0} % safe': 'Jeder Tag zu {0} % sicher',
  'Nothing bought': 'Nichts gekauft',
  'Bought only until home-grown flies come': 'Gekauft nur, bis eigene Fliegen kommen',
  'Bought whenever it helps': 'Gekauft, wann immer es hilft',
  '{0} cups in {1} sessions.': '{0} Becher in {1} Arbeitsgängen.',
  'No day can be judged: home-grown flies come too late.':
    'Kein Tag lässt sich beurteilen: eigene Fliegen kommen zu spät.',
  'Every day is at least {0} % safe.': 'Jeder Tag ist zu mindestens {0} % sicher.',
  'It does not hold: {0} is only {1} % safe.': 'Das trägt nicht: {0} ist nur zu {1} % sicher.',
  'As many cups, as far as can be told.': 'Ebenso viele Becher, soweit es sich sagen lässt.',
  'One cup more.': 'Ein Becher mehr.',
  'One cup fewer.': 'Ein Becher weniger.',
  '{0} cups more.': '{0} Becher mehr.',
  '{0} cups fewer.': '{0} Becher weniger.',
  'costs nothing that stands clear of chance.': 'kostet nichts, was sich vom Zufall abhebt.',
  'costs {0}.': 'kostet {0}.',
  'costs {0} ± {1} cups, {2}.': 'kostet {0} ± {1} Becher, {2}.',
  'Over {0} weeks the plan counts {1} cups: those that give most of their flies within them, a bought one as the started ones it costs.':
    'In {0} Wochen zählt der Plan {1} Becher: die, deren meiste Fliegen in diese Zeit fallen, einen gekauften als so viele angesetzte, wie er kostet.',
  'No plan could do with fewer than {0} on average, even one that knew yield and pace beforehand.':
    'Kein Plan käme im Mittel mit weniger als {0} aus, auch keiner, der Ertrag und Tempo im Voraus wüsste.',
  "Some day would be short even were nothing uncertain, so the rest can't be told apart.":
    'Auch wenn alles gewiss wäre, würde es an einem Tag knapp; der Rest lässt sich darum nicht aufteilen.',
  'Were nothing uncertain, {0} would do in parts of cups on any day; founders add {1}, your days and limits {2}, whole cups {3}.':
    'Wäre alles gewiss, reichten {0}, in Bruchteilen von Bechern an beliebigen Tagen; Gründer machen {1} mehr, Ihre Tage und Grenzen {2}, ganze Becher {3}.',
  "The plan's own way of deciding adds at most {0}: few sessions, founders in reserve, and what a search might still find. Not knowing adds {1}.":
    'Die Art, wie der Plan entscheidet, macht höchstens {0} mehr: wenige Arbeitstage, Gründer als Rücklage und was sich noch finden ließe. Das Ungewisse macht {1} mehr.',
  '{0} whole cups are the least that is proved.': 'Mindestens {0} ganze Becher sind bewiesen.',
  '{0} whole cups are the least that is proved, {1} the fewest found.':
    'Mindestens {0} ganze Becher sind bewiesen, {1} die wenigsten, die gefunden wurden.',
  'about {0} ± {1} {2} a quarter': 'etwa {0} ± {1} {2} im Vierteljahr',
  'No fly work on {0}': 'Keine Fliegenarbeit am {0}',
  'At most {0} cups a session': 'Höchstens {0} Becher auf einmal',
  'At most {0} cups on the shelf': 'Höchstens {0} Becher im Regal',
  '{0} days of quarantine for bought cups': '{0} Tage Quarantäne für gekaufte Becher',
  '{0} cups of each strain in reserve': '{0} Becher jedes Stamms in Reserve',
  'The days away': 'Die Tage der Abwesenheit',
  '{0} × {1} to start': '{0} × {1} ansetzen',
  '{0} × {1} to order': '{0} × {1} bestellen',
  '{0} × {1}, young, to order': '{0} × {1}, jung, bestellen',
  '{0} × {1}, young, to unpack': '{0} × {1}, jung, auspacken',
  '{0} × {1} to unpack': '{0} × {1} auspacken',
  'New on {0}: {1}.': 'Neu am {0}: {1}.',
  'No longer on {0}: {1}.': 'Nicht mehr am {0}: {1}.',
  'Now on {0} instead of {1}: {2}.': 'Jetzt am {0} statt am {1}: {2}.',
  'On {0} now {1}, instead of {2}.': 'Am {0} jetzt {1}, statt {2}.',
  'Cups of {0} are now believed to give {1} % more than before.':
    'Becher von {0} geben nach heutiger Kenntnis {1} % mehr als zuvor gedacht.',
  'Cups of {0} are now believed to give {1} % less than before.':
    'Becher von {0} geben nach heutiger Kenntnis {1} % weniger als zuvor gedacht.',
  'Cups of {0} are now believed to be {1} % quicker than before.':
    'Becher von {0} sind nach heutiger Kenntnis {1} % schneller als zuvor gedacht.',
  'Cups of {0} are now believed to be {1} % slower than before.':
    'Becher von {0} sind nach heutiger Kenntnis {1} % langsamer als zuvor gedacht.',
  'The coming four weeks want {0} flies of {1} instead of {2}.':
    'Die nächsten vier Wochen brauchen {0} Fliegen von {1} statt {2}.',
  'Lost: {0}.': 'Ausgefallen: {0}.',
  'Ended: {0}.': 'Beendet: {0}.',
  'New cups: {0}.': 'Neue Becher: {0}.',
  'Every day is now to be {0} % safe.': 'Jeder Tag soll jetzt zu {0} % sicher sein.',
  'The weekdays with time for fly work changed.': 'Die Wochentage mit Zeit für Fliegenarbeit haben sich geändert.',
  'Days away were changed.': 'Tage der Abwesenheit haben sich geändert.',
  'The expected temperature of a place was changed.': 'Die erwartete Temperatur eines Platzes wurde geändert.',
  'Founders: {0}.': 'Gründer: {0}.',
  'About {0} g fill the {1} cups planned until {2}, while it keeps: mix it early enough to cool, covered.':
    'Etwa {0} g füllen die {1} Becher, die bis {2} geplant sind, solange er sich hält: so früh mischen, dass er zugedeckt auskühlen kann.',
  'Clean cups run out at the next start: wash the {0} that are dirty and let them dry overnight.':
    'Beim nächsten Ansetzen fehlen saubere Becher: die {0} schmutzigen waschen und über Nacht trocknen lassen.',
  'Missing from {0} on: {1}.': 'Ab {0} fehlen: {1}.',
  larvae: 'Larven',
  pupae: 'Puppen',
  'first flies': 'die ersten Fliegen',
  '{0} was started the day before: are the founders alive, is the medium moist and not wet?':
    '{0} wurde am Tag zuvor angesetzt: Leben die Gründer, ist der Brei feucht und nicht nass?',
  '{0}: {1} are due about {2} ({3} to {4}); a note sharpens the forecast.':
    '{0}: {1} sind um {2} zu erwarten ({3} bis {4}); eine Notiz schärft die Vorhersage.',
  '{0} are wanted and no batch has enough: mix about {1} g early enough to cool, covered.':
    '{0} werden gebraucht, und kein Ansatz reicht: etwa {1} g so früh mischen, dass der Brei zugedeckt auskühlen kann.',
  'It was expected on {0}: ask where it is.': 'Sie sollte am {0} kommen: nachfragen, wo sie bleibt.',
  'Did it come, or was it cancelled? It was expected on {0} and is no longer counted on. If it came, write its cups down as bought (purchase {1}); if it will not come, write the purchase down again with 0 cups.':
    'Kam sie an, oder wurde sie abbestellt? Sie sollte am {0} kommen und zählt nicht mehr mit. Kam sie, die Becher als gekauft eintragen (Bestellung {1}); kommt sie nicht mehr, die Bestellung noch einmal mit 0 Bechern eintragen.',
  'Look for live flies or larvae, and for mites at lid and rim. While you have no cup of your own they may found others at once; once you have, keep them apart and start none from them before {0}.':
    'Nach lebenden Fliegen oder Larven sehen, und an Deckel und Rand nach Milben. Solange Sie keinen eigenen Becher haben, dürfen sie sofort Gründer geben; danach fernhalten und vor {0} keinen Becher daraus ansetzen.',
  '{0}: bought while no cup of your own stood here, so without quarantine; look for mites at its lid and rim before it gives founders.':
    '{0}: gekauft, als kein eigener Becher da war, also ohne Quarantäne; an Deckel und Rand nach Milben sehen, bevor er Gründer gibt.',
  'Look for live flies or larvae, keep it apart from your own cups, and start none from it before {0}.':
    'Nach lebenden Fliegen oder Larven sehen, von den eigenen Bechern fernhalten und vor {0} keinen Becher daraus ansetzen.',
  'About {0} flies for {1} wanted: {2}.': 'Etwa {0} Fliegen, {1} werden gebraucht: {2}.',
  'No flies for the {0} wanted: {1}.': 'Keine Fliegen, {0} werden gebraucht: {1}.',
  'Buy flies to feed from a shop or another keeper until a cup gives some.':
    'Futterfliegen im Laden oder bei anderen Haltern holen, bis ein Becher welche gibt.',
  'About {0} are missing for those that cannot wait.': 'Etwa {0} fehlen für die, die nicht warten können.',
  '{0} first, all of their {1}': '{0} zuerst, alle {1}',
  '{0} first, {1} of their flies': '{0} zuerst, {1} ihrer Fliegen',
  '{0} {1} now, the rest by {2}': '{0} jetzt {1}, den Rest bis {2}',
  '{0} can wait until {1}': '{0} kann bis {1} warten',
  'Without it {0} would not be safe from {1}; it covers the need until {2}, when cups of later sessions help.':
    'Ohne ihn wäre {0} ab {1} nicht sicher; er deckt den Bedarf bis {2}, dann helfen später angesetzte Becher.',
  'Without them {0} would not be safe from {1}; {2} cover the need until {3}, when cups of later sessions help.':
    'Ohne sie wäre {0} ab {1} nicht sicher; {2} decken den Bedarf bis {3}, dann helfen später angesetzte Becher.',
  'It covers the need of {0} from {1} and keeps cups at their best ready as founders from {2}.':
    'Er deckt den Bedarf von {0} ab {1} und hält ab {2} Becher in Bestform als Geber von Gründern bereit.',
  'They cover the need of {0} from {1} and keep cups at their best ready as founders from {2}.':
    'Sie decken den Bedarf von {0} ab {1} und halten ab {2} Becher in Bestform als Geber von Gründern bereit.',
  'The need is covered, but from {0} no cup of {1} would be at its best to give founders.':
    'Der Bedarf ist gedeckt, aber ab {0} wäre kein Becher von {1} in Bestform, um Gründer zu geben.',
  'The need is covered, but from {0} fewer than {1} cups of {2} would be at their best to give founders.':
    'Der Bedarf ist gedeckt, aber ab {0} wären weniger als {1} Becher von {2} in Bestform, um Gründer zu geben.',
  'Cups started now give flies only from {0}; bought ones arriving on {1} feed until then but start no other cup before {2}.':
    'Jetzt angesetzte Becher geben erst ab {0} Fliegen; gekaufte, die am {1} ankommen, füttern bis dahin, geben aber vor {2} keine Gründer.',
  'Cups started now give flies only from {0}; bought ones arriving on {1} feed until then. With no cup of your own there is nothing to protect yet: look for mites, then they may found others at once.':
    'Jetzt angesetzte Becher geben erst ab {0} Fliegen; gekaufte, die am {1} ankommen, füttern bis dahin. Ohne eigenen Becher gibt es noch nichts zu schützen: nach Milben sehen, dann dürfen sie sofort Gründer geben.',
  'There is no cup of {0} to give founders yet; those arriving on {1} may give them as soon as they are at their best, once you have looked for mites: there is nothing of your own to protect yet.':
    'Noch gibt es keinen Becher von {0}, der Gründer geben könnte; die am {1} ankommenden dürfen es, sobald sie in Bestform sind und Sie nach Milben gesehen haben: Es gibt noch nichts Eigenes zu schützen.',
  'No cup of {0} will be at its best to give founders; those arriving on {1} may give them from {2}, when quarantine is over.':
    'Kein Becher von {0} wird in Bestform sein, um Gründer zu geben; die am {1} ankommenden dürfen es ab {2}, wenn die Quarantäne vorbei ist.',
  '{0} flies are wanted; cups that are thrown out soonest are fed from first, so that those at their best keep founders.':
    '{0} Fliegen werden gebraucht; zuerst aus den Bechern füttern, die bald weggeworfen werden, damit die in Bestform Gründer behalten.',
  '{0} flies are wanted and only cups at their best hold enough.':
    '{0} Fliegen werden gebraucht, und nur Becher in Bestform haben genug.',
  '{0} flies are wanted but only about {1} are expected on hand.':
    '{0} Fliegen werden gebraucht, aber nur etwa {1} sind zu erwarten.',
  'It is {0} days old and gives hardly any more flies; about {1} are left in it after feeding.':
    'Er ist {0} Tage alt und gibt kaum noch Fliegen; nach dem Füttern sind etwa {1} darin.',
  'Mites were seen: keep it apart and do not start cups from it.':
    'Milben gesehen: abseits halten und keine Becher daraus ansetzen.',
  'Mould was seen: do not open it indoors or feed from it.':
    'Schimmel gesehen: nicht drinnen öffnen und nicht daraus füttern.',
  'Winged flies were seen: do not start cups from it.': 'Geflügelte Fliegen gesehen: keine Becher daraus ansetzen.',
  'Too wet when last looked at: add dry climbing material.': 'Zuletzt zu nass: trockenes Klettermaterial dazugeben.',
  'Too dry when last looked at: drip a little water on the medium.':
    'Zuletzt zu trocken: etwas Wasser auf den Brei tropfen.',
  '{0}: in quarantine until {1}; look for mites at its lid and rim.':
    '{0}: in Quarantäne bis {1}; an Deckel und Rand nach Milben sehen.',
  'In quarantine until {0}: feed from it, start no cup from it.':
    'In Quarantäne bis {0}: daraus füttern, keinen Becher daraus ansetzen.',
  '{0} does not multiply at {1} (about {2}): a cup gives back fewer flies than it is started with, so nothing is planned for it. Correct the temperature, or find a place at {3} to {4}.':
    '{0} vermehrt sich nicht an diesem Platz: {1} (etwa {2}). Ein Becher gibt weniger Fliegen, als man hineinsetzt, darum wird nichts geplant. Die Temperatur berichtigen oder einen Platz mit {3} bis {4} suchen.',
  'Near {0} males turn sterile and cups fail: start none there, and give males some days at {1}.':
    'Nahe {0} werden Männchen unfruchtbar, und Becher fallen aus: dort keine ansetzen, und den Männchen einige Tage bei {1} geben.',
  '{0}: {1} in the cups, above {2}. Move them lower, into shade or to a cooler room; keep the medium from drying.':
    '{0}: {1} in den Bechern, über {2}. Tiefer, in den Schatten oder in einen kühleren Raum stellen; den Brei nicht austrocknen lassen.',
  "the books have no kind “{0}”, so nothing is known of its growth and the ration stays as written. Perhaps {1} is meant: change the group's kind.":
    'die Bücher kennen keine Art „{0}“, darum ist über ihr Wachstum nichts bekannt, und die Ration bleibt wie aufgeschrieben. Vielleicht ist {1} gemeint: die Art der Gruppe ändern.',
  'Frost kills eggs, larvae and flies: expect losses and look at the cups.':
    'Frost tötet Eier, Larven und Fliegen: mit Verlusten rechnen und nach den Bechern sehen.',
  '{0}: {1} in the cups, below {2}. Development stands still; bring them where it is {3} to {4}.':
    '{0}: {1} in den Bechern, unter {2}. Die Entwicklung steht still; dorthin bringen, wo es {3} bis {4} hat.',
  'Cool days at {0} in the last week: {1}': 'Kühle Tage in der letzten Woche, {0}: {1}',
  'Warm days at {0} in the last week: {1}': 'Warme Tage in der letzten Woche, {0}: {1}',
  '{0} below what was expected': '{0} unter dem Erwarteten',
  '{0} above what was expected': '{0} über dem Erwarteten',
  '{0} ({1}): the first flies of {2} come {3} days later, on {4}.':
    '{0} ({1}): Die ersten Fliegen von {2} kommen {3} Tage später, am {4}.',
  '{0} ({1}): the first flies of {2} come {3} days earlier, on {4}.':
    '{0} ({1}): Die ersten Fliegen von {2} kommen {3} Tage früher, am {4}.',
  'A heat mat needs a thermostat with its probe among the cups, and stands under or beside them, never beneath a closed stack: cups overheat and mats can start fires.':
    'Eine Heizmatte braucht einen Thermostat mit dem Fühler zwischen den Bechern und liegt unter oder neben ihnen, nie unter einem geschlossenen Stapel: Becher überhitzen, und Matten können Brände auslösen.',
  'Warm cups dry sooner: look at the medium every other day.':
    'Warme Becher trocknen eher aus: jeden zweiten Tag nach dem Brei sehen.',
  '{0}: {1} to {2} are expected by {3}. Write down how many came; they are fed from then on.':
    '{0}: {1} bis {2} werden bis {3} erwartet. Aufschreiben, wie viele kamen; von da an werden sie gefüttert.',
  'Dust with {0} just before.': 'Unmittelbar vorher mit {0} bestäuben.',
  'Near a moult: feed only those that hunt, and take out every fly that is left.':
    'Kurz vor oder nach einer Häutung: nur füttern, wer jagt, und jede übrige Fliege herausnehmen.',
  'Something was left at {0} of {1} feedings: {2} each in place of {3}.':
    'Bei {0} von {1} Fütterungen blieb etwas übrig: je {2} statt {3}.',
  'You have been giving more, and it was eaten: {0} each in place of {1}.':
    'Zuletzt gab es mehr, und es wurde gefressen: je {0} statt {1}.',
  '{0} % more of them': '{0} % mehr davon',
  '{0} % fewer of them': '{0} % weniger davon',
  'A fly weighs {0} mg now, an ordinary one {1} mg: {2}.':
    'Eine Fliege wiegt jetzt {0} mg, eine gewöhnliche {1} mg: {2}.',
  'Cups are fuller than usual or emptier: a fly should weigh {0} mg, an ordinary one {1} mg: {2}.':
    'Die Becher sind voller oder leerer als sonst: Eine Fliege sollte {0} mg wiegen, eine gewöhnliche {1} mg: {2}.',
  'last fed on {0}, longer ago than they can wait.': 'zuletzt am {0} gefüttert, länger her, als sie warten können.',
  'by the books they have moved on to their next stage by {0}: look, and write it down.':
    'nach den Büchern sind sie bis {0} ins nächste Stadium gekommen: nachsehen und aufschreiben.',
  'expected by {0}: write down how many came, or that none will.':
    'bis {0} erwartet: aufschreiben, wie viele kamen oder dass keine mehr kommen.',
  'Your vet decides what is right: too much of a vitamin harms as well.':
    'Was richtig ist, entscheidet der Tierarzt: Auch zu viel eines Vitamins schadet.',
  'by the schedule the week brings less calcium than phosphorus ({0} to 1).':
    'nach dem Plan bringt die Woche weniger Kalzium als Phosphor ({0} zu 1).',
  'bare flies bring less calcium than phosphorus ({0} to 1). If you dust them, write the schedule down.':
    'bloße Fliegen bringen weniger Kalzium als Phosphor ({0} zu 1). Wer sie bestäubt, schreibt den Plan dafür auf.',
  'It lost {0} % against its best recent weight: weigh again, feed, and ask a vet.':
    'Es hat {0} % gegenüber dem besten letzten Gewicht verloren: noch einmal wiegen, füttern und den Tierarzt fragen.',
  'Three weighings on different days give a first line.':
    'Drei Wägungen an verschiedenen Tagen geben einen ersten Verlauf.',
  'It loses mass, {0} % a day: feed more and ask a vet.':
    'Es nimmt ab, {0} % am Tag: mehr füttern und den Tierarzt fragen.',
  'It changes by {0} % a day, less than half of what is expected: feed more, weigh again, and ask a vet if it goes on.':
    'Es verändert sich um {0} % am Tag, weniger als die Hälfte des Erwarteten: mehr füttern, wieder wiegen und den Tierarzt fragen, wenn es so weitergeht.',
  'A grown animal gains {0} % a day: feed less, unless it carries eggs.':
    'Ein erwachsenes Tier nimmt {0} % am Tag zu: weniger füttern, außer es trägt Eier.',
  'It changes by {0} % a day, as it should.': 'Es verändert sich um {0} % am Tag, wie es soll.',
  'It gains mass.': 'Es nimmt zu.',
  'These are starting points, not advice for your animal: watch its body, weigh it, and ask a vet who knows the species.':
    'Das sind Ausgangswerte, kein Rat für Ihr Tier: auf seinen Körper achten, es wiegen und einen Tierarzt fragen, der die Art kennt.',
  'Practice speaks of animals of {0} to {1} g.': 'Die Praxis spricht von Tieren von {0} bis {1} g.',
  'Feed nothing near a moult, and take left-over flies out: they can hurt a soft animal.':
    'Kurz vor und nach einer Häutung nichts füttern und übrige Fliegen herausnehmen: Sie können ein weiches Tier verletzen.',
  'Flies are part of the diet only; fry take no adult flies.':
    'Fliegen sind nur ein Teil des Futters; Jungbrut nimmt keine erwachsenen Fliegen.',
  'on {0}': 'am {0}',
  'from {0} to {1}': 'von {0} bis {1}',
  '{0} may fall short {1}: on the worst day with a chance of {2} %, by about {3} of the {4} flies wanted.':
    '{0}: {1} reichen die Fliegen vielleicht nicht, am schlechtesten Tag mit {2} % Wahrscheinlichkeit; dann fehlen etwa {3} von {4} Fliegen.',
  'No parcel ordered now comes before {0}.': 'Kein jetzt bestelltes Paket kommt vor {0}.',
  'With the order in the plan (cups: {0}, to order by {1}) it is as safe as asked again from {2}.':
    'Mit der Bestellung aus dem Plan (Becher: {0}, zu bestellen bis {1}) ist es ab {2} wieder so sicher wie verlangt.',
  'Cannot wait and come first: {0}.': 'Können nicht warten und kommen zuerst: {0}.',
  'Can be fed later, by as many days: {0}.': 'Können später gefüttert werden, um so viele Tage: {0}.',
  'What is still missing has to be other prey, or flies from another keeper.':
    'Was dann noch fehlt, muss anderes Futter sein, oder Fliegen von einem anderen Halter.',
};
