/** Runs one built bench and writes its rows: `node scripts/run-bench.mjs BENCH.js ROWS.json`. */
import { writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';

const [bench, rows] = process.argv.slice(2);
const { run } = await import(pathToFileURL(bench).href);
writeFileSync(rows, JSON.stringify({ ...(await run()), measured: new Date().toISOString().slice(0, 16) }));
process.exit(0);
