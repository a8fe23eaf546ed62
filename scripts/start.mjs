/** `npm start`: installs and builds what is missing, then serves the page on this computer. */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { build } from './build.mjs';
import { installPackages, requireNode } from './packages.mjs';
import { projectFolder } from './run-command.mjs';

requireNode();
await installPackages();
await build();

const given = process.argv.slice(2);
const folder = given.some((word) => word === '--data' || word.startsWith('--data='))
  ? []
  : ['--data', join(projectFolder, 'household')];
const program = join(projectFolder, 'bin', 'flylarder.mjs');
const server = spawn(process.execPath, [program, 'serve', ...folder, ...given], { stdio: 'inherit' });
// The server shuts itself down on these; this program waits for it.
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => server.kill(signal));
server.on('exit', (code) => process.exit(code ?? 0));
