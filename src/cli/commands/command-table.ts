/** Every command: what it is for in a few words, and its file, loaded only when it is called. */
import type { Command } from '../command.ts';

interface CommandEntry {
  summary: string;
  load: () => Promise<{ command: Command }>;
}

export const commandTable: Record<string, CommandEntry> = {
  serve: { summary: 'serve the page and the HTTP interface on this computer', load: () => import('./serve.ts') },
  devices: { summary: 'let devices of the home network in, or shut them out', load: () => import('./devices.ts') },
  accounts: { summary: 'people of a facility and what they may do', load: () => import('./accounts.ts') },
  work: { summary: 'work the answers of a facility out ahead', load: () => import('./work.ts') },
  audit: { summary: 'who recorded what, when and from where', load: () => import('./audit.ts') },
  demo: { summary: 'fill an empty household with an invented one', load: () => import('./demo.ts') },
  record: { summary: 'record what happened', load: () => import('./record.ts') },
  import: { summary: 'bring in a logbook, or a spreadsheet of your own', load: () => import('./import.ts') },
  logbook: { summary: 'what was written, with ids to correct it', load: () => import('./logbook.ts') },
  export: { summary: 'write the whole logbook as JSON Lines', load: () => import('./export.ts') },
  today: { summary: 'what to do today, and the state of each cup', load: () => import('./today.ts') },
  forecast: { summary: 'flies wanted and on hand in the coming weeks', load: () => import('./forecast.ts') },
  plan: { summary: 'the dated jobs that keep the supply unbroken', load: () => import('./plan.ts') },
  compare: { summary: 'plans side by side, what rules cost', load: () => import('./compare.ts') },
  learned: { summary: 'what your own logbook has taught', load: () => import('./learned.ts') },
  hindcast: { summary: 'what was forecast in past weeks, and what came', load: () => import('./hindcast.ts') },
  animals: { summary: 'what the animals want, and who can wait', load: () => import('./animals.ts') },
  ration: { summary: 'flies for one kind of animal', load: () => import('./ration.ts') },
  pot: { summary: 'flies in a pot by its weight', load: () => import('./pot.ts') },
  lines: { summary: 'lines of cups and what threatens them', load: () => import('./lines.ts') },
  mixing: { summary: 'may two strains go into one cup?', load: () => import('./mixing.ts') },
  strains: { summary: 'the strains that you keep, side by side', load: () => import('./strains.ts') },
  winged: { summary: 'a winged fly was seen: what it means', load: () => import('./winged.ts') },
  temperature: { summary: 'how warm the places are, logger files, what if', load: () => import('./temperature.ts') },
  sensors: { summary: 'sensors that send temperatures', load: () => import('./sensors.ts') },
  lifecycle: { summary: "one cup's life at a temperature", load: () => import('./lifecycle.ts') },
  cross: { summary: 'what comes of crossing two flies', load: () => import('./cross.ts') },
  mix: { summary: 'medium for a number of cups, step by step', load: () => import('./mix.ts') },
  recipes: { summary: 'recipes of medium, by weight', load: () => import('./recipes.ts') },
  larder: { summary: 'what is on hand, and for how many cups', load: () => import('./larder.ts') },
  shopping: { summary: 'when to mix, wash and shop, and the list', load: () => import('./shopping.ts') },
  ledger: { summary: 'costs and yield week by week', load: () => import('./ledger.ts') },
  labels: { summary: 'labels for cups, to print', load: () => import('./labels.ts') },
  calendar: { summary: 'the plan as a calendar file', load: () => import('./calendar.ts') },
  sheet: { summary: 'a sheet for a sitter, a month, the shelf or a gift', load: () => import('./sheet.ts') },
  backup: { summary: 'copy the logbook', load: () => import('./backup.ts') },
  restore: { summary: 'put a copy in its place', load: () => import('./restore.ts') },
  doctor: { summary: 'look for damage, save what can be read', load: () => import('./doctor.ts') },
};
