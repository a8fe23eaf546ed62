/** Every screen by its name in the address; each is fetched when it is first opened. */
import type { Component } from 'svelte';

const screens: Record<string, () => Promise<{ default: Component }>> = {
  today: () => import('./today/Today.svelte'),
  welcome: () => import('./welcome/Welcome.svelte'),
  setup: () => import('./setup/SetUp.svelte'),
  forecast: () => import('./forecast/Forecast.svelte'),
  shelf: () => import('./shelf/Shelf.svelte'),
  culture: () => import('./culture/Culture.svelte'),
  temperature: () => import('./temperature/Temperature.svelte'),
  plan: () => import('./plan/Plan.svelte'),
  animals: () => import('./animals/Animals.svelte'),
  logbook: () => import('./logbook/Logbook.svelte'),
  settings: () => import('./settings/Settings.svelte'),
  lifecycle: () => import('./lifecycle/Lifecycle.svelte'),
  learned: () => import('./learned/Learned.svelte'),
  scan: () => import('./scan/Scan.svelte'),
  start: () => import('./start/StartCup.svelte'),
  kitchen: () => import('./kitchen/Kitchen.svelte'),
  mix: () => import('./mix/Mix.svelte'),
  recipes: () => import('./recipes/Recipes.svelte'),
  paper: () => import('./paper/Paper.svelte'),
  ending: () => import('./ending/Ending.svelte'),
  strains: () => import('./strains/Strains.svelte'),
  lines: () => import('./lines/Lines.svelte'),
  cross: () => import('./cross/Cross.svelte'),
  more: () => import('./more/More.svelte'),
};

/** The screen of that name; an unknown name leads to today. */
export async function screenOf(name: string): Promise<Component> {
  const load = screens[name] ?? screens['today'];
  if (!load) throw new RangeError(`screenOf: there is no screen ${name}`);
  return (await load()).default;
}
