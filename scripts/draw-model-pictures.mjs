/** Draws the pictures of docs/models from the code: `node scripts/draw-model-pictures.mjs`. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { createServer } from 'vite';

const project = fileURLToPath(new URL('..', import.meta.url));
const cache = mkdtempSync(join(tmpdir(), 'flylarder-pictures-'));
const server = await createServer({
  root: project,
  cacheDir: cache,
  configFile: false,
  appType: 'custom',
  logLevel: 'error',
  server: { middlewareMode: true, ws: false, watch: null },
  optimizeDeps: { noDiscovery: true },
});
try {
  const module = join(project, 'tests/reference/model-pictures/pictures.ts');
  const { modelPictures } = await server.ssrLoadModule(pathToFileURL(module).pathname);
  for (const [file, svg] of modelPictures()) {
    writeFileSync(join(project, 'docs/models', file), svg);
    console.log(`docs/models/${file}`);
  }
} finally {
  await server.close();
  rmSync(cache, { recursive: true, force: true });
}
