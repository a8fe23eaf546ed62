import '@fontsource-variable/newsreader/wght.css';
import '@fontsource-variable/newsreader/wght-italic.css';
import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import './styles/tokens.css';
import './styles/base.css';
import './styles/controls.css';
import './styles/figures.css';
import './styles/picture.css';
import './styles/life.css';
import './styles/print.css';
import { mount } from 'svelte';
import App from './App.svelte';
import { applyTheme, preferences } from './state/preferences.svelte.ts';
import { useLanguage } from './text/text.svelte.ts';

applyTheme();
await useLanguage(preferences.language);
const target = document.getElementById('page');
if (target) mount(App, { target });

// Installed pages open without network; an address that is not protected cannot have this.
if (import.meta.env.PROD && 'serviceWorker' in navigator) {
  void navigator.serviceWorker.register(new URL('service-worker.js', document.baseURI));
}
