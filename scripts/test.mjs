/**
 * `npm test`: installs what is missing, builds, checks the sources, runs the tests in Node and in a real
 * browser. The last line says `N passed, N failed`; the exit code is 0 only when none failed.
 * `--slow` adds the slow tests.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { build } from './build.mjs';
import { runChecks } from './check.mjs';
import { findOrInstallChromium } from './chromium.mjs';
import { installPackages, requireNode } from './packages.mjs';
import { projectFolder, runCommand } from './run-command.mjs';

const reports = join(projectFolder, '.cache', 'reports');

requireNode();
await installPackages();
const slow = process.argv.includes('--slow') ? { FLYLARDER_SLOW_TESTS: '1' } : {};
const chromium = await findOrInstallChromium();
await build();
rmSync(reports, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });

const counts = [await runChecks({ withArchitecture: false }), await nodeTests(), await browserTests()];
const total = (key) => counts.reduce((sum, part) => sum + part[key], 0);
console.log(`${total('passed')} passed, ${total('failed')} failed`);
process.exitCode = total('failed') === 0 ? 0 : 1;

async function nodeTests() {
  const report = join(reports, 'node.json');
  const { code } = await runCommand(
    'vitest',
    ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${report}`],
    { show: true, env: slow },
  );
  return settled(code, report, ({ numPassedTests, numFailedTests, numFailedTestSuites, testResults }) => {
    // A file that cannot even be loaded has no tests to fail: it counts as one.
    const broken = testResults.filter((file) => file.status === 'failed' && file.assertionResults.length === 0).length;
    return { passed: numPassedTests, failed: numFailedTests + broken, files: numFailedTestSuites };
  });
}

async function browserTests() {
  const folder = join(projectFolder, 'tests', 'browser');
  const any = existsSync(folder) && readdirSync(folder, { recursive: true }).some((file) => file.endsWith('.spec.ts'));
  if (!any) return { passed: 0, failed: 0 };
  if (!chromium) return { passed: 0, failed: 1 };
  const report = join(reports, 'browser.json');
  const { code } = await runCommand('playwright', ['test', '--reporter=list,json'], {
    show: true,
    env: {
      ...slow,
      CHROMIUM_PATH: chromium,
      PLAYWRIGHT_JSON_OUTPUT_NAME: report,
      FLYLARDER_TEST_PORT: String(await freePort()),
    },
  });
  return settled(code, report, ({ stats }) => ({
    passed: stats.expected + stats.flaky,
    failed: stats.unexpected,
  }));
}

/** Two runs on one computer must not meet. */
function freePort() {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });
}

/** A runner that failed without saying which test did counts as one failure. */
function settled(code, report, read) {
  if (!existsSync(report)) return { passed: 0, failed: 1 };
  const { passed, failed } = read(JSON.parse(readFileSync(report, 'utf8')));
  return { passed, failed: code !== 0 && failed === 0 ? 1 : failed };
}
