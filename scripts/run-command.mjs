/** Runs a program with the project's own tools first on its path. */
import { spawn } from 'node:child_process';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const projectFolder = fileURLToPath(new URL('..', import.meta.url));

const environment = (extra) => ({
  ...process.env,
  PATH: `${join(projectFolder, 'node_modules', '.bin')}${delimiter}${process.env.PATH ?? ''}`,
  ...extra,
});

/**
 * Runs `command` in the project's folder and waits. Resolves to its exit code and, unless its output
 * is shown as it comes (`show`), to what it printed.
 * @returns {Promise<{ code: number, output: string }>}
 */
export function runCommand(command, args, { show = false, env = {} } = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd: projectFolder,
      env: environment(env),
      stdio: show ? 'inherit' : ['ignore', 'pipe', 'pipe'],
      shell: process.platform === 'win32',
    });
    let output = '';
    child.stdout?.on('data', (data) => (output += data));
    child.stderr?.on('data', (data) => (output += data));
    child.on('error', (error) => resolve({ code: 127, output: `${output}${error.message}\n` }));
    child.on('close', (code, signal) => resolve({ code: code ?? (signal ? 128 : 1), output }));
  });
}

/** As `runCommand` with its output shown; ends this program with the same code when it fails. */
export async function runOrExit(command, args, options = {}) {
  const { code } = await runCommand(command, args, { show: true, ...options });
  if (code !== 0) {
    console.error(`${command} ${args.join(' ')} ended with exit code ${code}.`);
    process.exit(code);
  }
}
