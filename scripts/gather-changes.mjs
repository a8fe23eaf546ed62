/**
 * `npm run changes`: moves the notes of changes/ into CHANGELOG.md under the version of package.json,
 * newest version first. Each note is one file of Markdown list items, named after its subject.
 */
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectFolder } from './run-command.mjs';

const folder = join(projectFolder, 'changes');
const changelog = join(projectFolder, 'CHANGELOG.md');
const title = '# Changes\n';

const notes = (existsSync(folder) ? readdirSync(folder) : []).filter((file) => file.endsWith('.md')).sort();
if (notes.length === 0) {
  console.log('No notes in changes/.');
} else {
  const { version } = JSON.parse(readFileSync(join(projectFolder, 'package.json'), 'utf8'));
  const items = notes.map((file) => readFileSync(join(folder, file), 'utf8').trim()).join('\n');
  const before = existsSync(changelog) ? readFileSync(changelog, 'utf8').replace(title, '').trim() : '';
  writeFileSync(changelog, `${title}\n## ${version}\n\n${items}\n${before === '' ? '' : `\n${before}\n`}`);
  for (const file of notes) rmSync(join(folder, file));
  console.log(`${notes.length} notes moved to CHANGELOG.md under ${version}.`);
}
