/** Import directions between rooms, each with its reason. The table is in docs/architecture.md. */
const pureRooms = 'foundation|reference|biology|climate|strains|animals|media|logbook|learning|planner|paper|app';
const mayImport = {
  foundation: [],
  reference: ['foundation', 'biology'],
  biology: ['foundation'],
  climate: ['foundation'],
  strains: ['foundation'],
  animals: ['foundation'],
  media: ['foundation'],
  logbook: ['foundation'],
  learning: ['foundation', 'climate', 'biology'],
  planner: ['foundation', 'climate', 'biology', 'strains', 'animals', 'media'],
  paper: ['foundation'],
  store: ['foundation', 'logbook'],
  sync: ['foundation', 'logbook', 'store/store'],
  app: ['foundation', 'reference', 'biology', 'climate', 'strains', 'animals', 'media', 'logbook', 'learning', 'planner', 'paper', 'sync', 'store/store'],
  server: ['app', 'sync', 'logbook', 'foundation', 'store'],
  web: ['app', 'sync', 'logbook', 'foundation', 'store/store', 'store/indexeddb', 'store/memory'],
  cli: ['app', 'server', 'sync', 'logbook', 'foundation', 'store/store', 'store/receipts', 'store/sqlite', 'store/memory', 'store/postgres'],
};

const roomRules = Object.entries(mayImport).map(([room, others]) => ({
  name: `${room}-imports`,
  comment: `${room}/ may import ${others.length ? others.join(', ') : 'no other room'}: the data flows one way.`,
  severity: 'error',
  from: { path: `^src/${room}/`, pathNot: '\\.test\\.ts$' },
  to: { path: '^src/', pathNot: `^src/(${[room, ...others].join('|')})(/|\\.ts|$)` },
}));

export default {
  forbidden: [
    ...roomRules,
    {
      name: 'no-circular',
      comment: 'A cycle means that two files are one subject, or that a third is missing.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'room-by-its-door',
      comment: 'A room is entered by its index.ts, so that its insides may change.',
      severity: 'error',
      from: { path: '^src/([^/]+)/', pathNot: '\\.test\\.ts$' },
      to: { path: '^src/([^/]+)/.+', pathNot: '^src/($1/|[^/]+/index\\.ts$|store/)' },
    },
    {
      name: 'pure-rooms-do-no-io',
      comment: 'Pure rooms run in the browser, on the server and in tests alike.',
      severity: 'error',
      from: { path: `^src/(${pureRooms})/`, pathNot: '\\.test\\.ts$' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'pure-rooms-packages',
      comment: 'Only packages that are pure themselves.',
      severity: 'error',
      from: { path: `^src/(${pureRooms})/`, pathNot: '\\.test\\.ts$' },
      to: {
        dependencyTypes: ['npm', 'npm-dev'],
        pathNot: 'node_modules/(zod|pure-rand|temporal-polyfill|@stdlib|highs|uqr|csv-parse|ical-generator)/',
      },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsConfig: { fileName: 'tsconfig.node.json' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: { extensions: ['.ts', '.svelte', '.mjs', '.js', '.json'], exportsFields: ['exports'], conditionNames: ['import', 'types', 'default'] },
    exclude: { path: '\\?raw$' },
  },
};
