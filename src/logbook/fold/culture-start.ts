/** The beginning of a culture: what its `started` or `bought` entry and the settings say together. */
import { addDays } from '../../foundation/index.ts';
import { containerDefaults } from './defaults.ts';
import type { ReportOf, Reports } from './draft-facts.ts';
import type { ContainerFacts, CultureFacts } from './facts.ts';

export type Start = ReportOf<'started'> | ReportOf<'bought'>;

export interface CultureSettings {
  /** Keys of places, the one that holds when nothing is said first. */
  places: Set<string>;
  strains: Set<string>;
  containers: Map<string, ContainerFacts>;
  batches: Set<string>;
  quarantineDays: number;
}

/** The culture on its first day, or null when its strain is unknown; fromCultures are filled later. */
export function newCulture(start: Start, reports: Reports, settings: CultureSettings): CultureFacts | null {
  if (!settings.strains.has(start.strain)) {
    reports.unknown(start, 'strain', start.strain, 'strain');
    return null;
  }
  const container = containerOf(start, reports, settings);
  return {
    culture: start.culture,
    label: start.label ?? start.culture,
    strain: start.strain,
    on: start.on,
    places: [{ from: start.on, place: placeOf(start, reports, settings) }],
    container: container === null ? null : container.container,
    mediumMassG: start.mediumMassG ?? (container ?? containerDefaults).mediumMassG,
    surfaceCm2: start.surfaceCm2 ?? (container ?? containerDefaults).surfaceCm2,
    founders: start.founders ?? (container ?? containerDefaults).founders,
    fromCultures: [],
    seen: [],
    harvests: [],
    ended: null,
    notes: start.note === undefined ? [] : [{ on: start.on, text: start.note }],
    ...originOf(start, reports, settings),
  };
}

function originOf(start: Start, reports: Reports, settings: CultureSettings) {
  if (start.kind === 'bought') {
    return {
      origin: 'bought' as const,
      startedOn: addDays(start.on, -start.ageDays),
      batch: null,
      founderAgeDays: null,
      quarantinedUntil: start.quarantineUntil ?? addDays(start.on, settings.quarantineDays),
    };
  }
  return {
    origin: 'started' as const,
    startedOn: start.on,
    batch: batchOf(start, reports, settings),
    founderAgeDays: start.founderAgeDays ?? null,
    ...(start.liveYeast && { liveYeast: start.liveYeast }),
    quarantinedUntil: null,
  };
}

function placeOf(start: Start, reports: Reports, settings: CultureSettings): string {
  const usual = [...settings.places][0] as string;
  if (start.place === undefined) return usual;
  if (settings.places.has(start.place)) return start.place;
  reports.unknown(start, 'place', start.place, 'place');
  return usual;
}

function containerOf(start: Start, reports: Reports, settings: CultureSettings): ContainerFacts | null {
  if (start.container === undefined) return null;
  const container = settings.containers.get(start.container);
  if (!container) {
    reports.problem(start, 'container', `${start.container}, which no entry describes`, 'the key of a container');
  }
  return container ?? null;
}

function batchOf(start: ReportOf<'started'>, reports: Reports, settings: CultureSettings): string | null {
  if (start.batch === undefined) return null;
  if (settings.batches.has(start.batch)) return start.batch;
  reports.problem(start, 'batch', `${start.batch}, which no entry describes`, 'the key of a batch of medium');
  return null;
}
