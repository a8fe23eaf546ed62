/** `npm run setup`: installs what the tests need and says what it could not. */
import { installPackages, requireNode } from './packages.mjs';
import { findOrInstallChromium } from './chromium.mjs';

requireNode();
await installPackages();
const chromium = await findOrInstallChromium();
console.log(chromium ? `Chromium: ${chromium}` : 'Chromium: none; the browser tests cannot run.');
