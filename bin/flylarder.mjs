#!/usr/bin/env node
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const program = new URL('../dist/cli.js', import.meta.url);
if (existsSync(fileURLToPath(program))) {
  await import(program.href);
} else {
  console.error('flylarder is not built here yet: run `npm start` (or `npm run build`) in its folder first.');
  process.exitCode = 3;
}
