/** The names on cups, groups, strains and places, by key; a key without a name stands for itself. */
import type { Facts } from '../../logbook/index.ts';
import type { LabelBook } from './job-text.ts';

export function labelBook(facts: Facts): LabelBook {
  const cups = new Map(facts.cultures.map((c) => [c.culture, c.label]));
  const groups = new Map(facts.groups.map((g) => [g.group, g.name]));
  const strains = new Map(facts.strains.map((s) => [s.strain, s.name]));
  const places = new Map(facts.places.map((p) => [p.place, p.name || p.place]));
  return {
    cup: (key) => cups.get(key) ?? key,
    group: (key) => groups.get(key) ?? key,
    strain: (key) => strains.get(key) ?? key,
    place: (key) => places.get(key) ?? key,
  };
}
