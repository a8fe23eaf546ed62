/** An entry as a line in the language of whoever reads it. */
import { sentence } from '../foundation/index.ts';
import { type Entry, type EntryDraft, entrySentence, type Facts, type Names } from '../logbook/index.ts';
import { type Telling, wordsOf } from './words/words.ts';

/**
 * The entry without its day, such as `M12 harvested: 40 flies.`
 * @param names that stand for the keys; keys stand for themselves where there are none.
 */
export function entryInWords(entry: Entry | EntryDraft, telling: Telling = {}, names: Names = {}): string {
  return sentence(entrySentence(entry, names), wordsOf(telling));
}

/** What the household calls its cups, places and so on, by their keys. */
export function namesIn({ cultures, places, strains, containers, recipes, groups }: Facts): Names {
  return {
    culture: new Map(cultures.map((each) => [each.culture, each.label])),
    place: new Map(places.map((each) => [each.place, each.name])),
    strain: new Map(strains.map((each) => [each.strain, each.name])),
    container: new Map(containers.map((each) => [each.container, each.name])),
    recipe: new Map(recipes.map((each) => [each.recipe, each.name])),
    group: new Map(groups.map((each) => [each.group, each.name])),
  };
}
