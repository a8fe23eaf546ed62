/**
 * `npm run licences`: every locked package by licence, those that a running household loads marked; and what
 * the registry knows of their vulnerabilities, where it answers. Exit status 1 when it knows of one.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectFolder, runCommand } from './run-command.mjs';

const { packages } = JSON.parse(readFileSync(join(projectFolder, 'package-lock.json'), 'utf8'));
const byLicence = new Map();
for (const [path, { version, license = 'not said', dev }] of Object.entries(packages)) {
  if (path === '') continue;
  const name = `${path.split('node_modules/').at(-1)} ${version}${dev ? '' : ' *'}`;
  byLicence.set(license, [...(byLicence.get(license) ?? []), name]);
}
for (const [licence, names] of [...byLicence].sort(([, a], [, b]) => b.length - a.length)) {
  console.log(`${licence}: ${names.length}`);
  console.log(`  ${names.sort().join(', ')}\n`);
}
console.log('* loaded by a running household; what is bundled with it is listed in dist/licences-node.txt\n');

const { code, output } = await runCommand('npm', ['audit', '--json']);
const report = parsed(output);
const counts = report?.metadata?.vulnerabilities;
if (!counts) {
  console.log('Known vulnerabilities: the registry does not answer that question here.');
} else {
  console.log(`Known vulnerabilities: ${counts.total}`);
  for (const [name, { severity, range }] of Object.entries(report.vulnerabilities)) {
    console.log(`  ${name} ${range}: ${severity}`);
  }
  process.exitCode = code === 0 ? 0 : 1;
}

function parsed(text) {
  try {
    return JSON.parse(text.slice(text.indexOf('{')));
  } catch {
    return null;
  }
}
