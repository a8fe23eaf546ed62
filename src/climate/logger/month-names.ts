/** Months by their names in the languages that loggers' programs write, without accents and points. */

const twelve: readonly string[] = [
  'january jan januar jaenner janner janvier janv enero ene gennaio gen januari janeiro styczen stycznia sty leden ledna januarie tammikuu',
  'february feb februar fevrier fevr fev febrero febbraio februari fevereiro luty lutego lut unor unora helmikuu',
  'march mar marz maerz mrz mars marzo maart mrt marco marzec marca brezen brezna maaliskuu',
  'april apr avril avr abril abr aprile kwiecien kwietnia kwi duben dubna huhtikuu',
  'may mai mayo maggio mag mei maio maj maja kveten kvetna toukokuu',
  'june jun juni juin junio giugno giu junho czerwiec czerwca cze cerven cervna kesakuu',
  'july jul juli juillet juil julio luglio lug julho lipiec lipca lip cervenec cervence heinakuu',
  'august aug aout agosto ago augustus agu sierpien sierpnia sie srpen srpna elokuu',
  'september sep sept septembre septiembre settembre set setembro wrzesien wrzesnia wrz zari syyskuu',
  'october oct oktober okt octobre octubre ottobre ott outubro out pazdziernik pazdziernika paz rijen rijna lokakuu',
  'november nov novembre noviembre novembro listopad listopada lis marraskuu',
  'december dec dezember dez decembre diciembre dic dicembre desember des dezembro grudzien grudnia gru prosinec prosince joulukuu',
];

const monthByName = new Map(twelve.flatMap((names, i) => names.split(' ').map((name) => [name, i + 1] as const)));

/** 1 to 12, or null for a word that names no month. */
export function monthOfName(word: string): number | null {
  const plain = word
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase();
  return monthByName.get(plain) ?? null;
}
