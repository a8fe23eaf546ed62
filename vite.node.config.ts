/**
 * Bundles what runs in Node: the command line with its server (dist/cli.js), the thread that
 * reckons for it (dist/reckoner.js) and the benches (dist/bench). Packages are bundled too, save those that carry native code or pick it at run time.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { defineConfig } from 'vite';
import { bundledLicences } from './vite.licences.ts';

const { version } = JSON.parse(readFileSync('package.json', 'utf8'));
const externalPackages = ['@node-rs/argon2', 'highs', 'libsql', 'pg', 'pg-boss'];
/** Only benches use them, from where they are installed. */
const benchPackages = ['@playwright/test', 'lighthouse'];

/** Entry name in dist/ by source file. */
function entryPoints(): Record<string, string> {
  const benches = readdirSync('bench').filter((file) => file.endsWith('.ts') && isBench(`bench/${file}`));
  return {
    cli: 'src/cli/main.ts',
    reckoner: 'src/cli/reckoner.ts',
    ...Object.fromEntries(benches.map((file) => [`bench/${file.slice(0, -3)}`, `bench/${file}`])),
  };
}

/** A bench exports `run`; other files of the folder are parts of one. */
function isBench(path: string): boolean {
  return /^export async function run\(/m.test(readFileSync(path, 'utf8'));
}

export default defineConfig({
  define: { __FLYLARDER_VERSION__: JSON.stringify(version) },
  plugins: [bundledLicences('licences-node.txt')],
  ssr: { target: 'node', noExternal: true, external: [...externalPackages, ...benchPackages] },
  build: {
    ssr: true,
    target: 'node20',
    outDir: 'dist',
    emptyOutDir: false,
    minify: false,
    sourcemap: false,
    reportCompressedSize: false,
    rolldownOptions: {
      input: entryPoints(),
      // Our modules do nothing when loaded but define things: a command loads only what it names.
      treeshake: {
        moduleSideEffects: (id: string, external: boolean) =>
          external || !/\/src\//.test(id) || /src\/cli\/(main|reckoner)\.ts$/.test(id),
      },
      output: {
        format: 'esm',
        entryFileNames: '[name].js',
        chunkFileNames: 'chunks/[name]-[hash].js',
        assetFileNames: 'chunks/[name]-[hash][extname]',
      },
    },
  },
});
