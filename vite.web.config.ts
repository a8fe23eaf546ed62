import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { bundledLicences } from './vite.licences.ts';

/** Our pure rooms do nothing when loaded but define things: what a page does not use of them is left out. */
const pureRooms = /^(?!.*\/node_modules\/).*\/src\/(?!web\/)/;
const treeshake = { moduleSideEffects: [{ test: pureRooms, sideEffects: false }] };

/** Builds the page into dist/web: static files that any server, or none of ours, can hand out. */
export default defineConfig({
  root: 'src/web',
  base: './',
  publicDir: 'public',
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    rolldownOptions: { treeshake },
  },
  worker: { format: 'es', rolldownOptions: { treeshake }, plugins: () => [bundledLicences('licences-workers.txt')] },
  plugins: [
    svelte(),
    bundledLicences('licences.txt'),
    VitePWA({
      registerType: 'autoUpdate',
      injectRegister: false,
      filename: 'service-worker.js',
      manifest: {
        name: 'Flylarder',
        short_name: 'Flylarder',
        description: 'Logbook, forecast and daily jobs for growing flightless fruit flies',
        start_url: './',
        display: 'standalone',
        background_color: '#f7f2e8',
        theme_color: '#f7f2e8',
        icons: [{ src: 'icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
      },
      workbox: {
        globPatterns: ['**/*.{js,css,html,svg,woff2}'],
        globIgnores: ['**/*vietnamese*'],
        navigateFallbackDenylist: [/^\/(api|network)\//],
      },
    }),
  ],
});
