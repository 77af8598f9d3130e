import react from '@vitejs/plugin-react';
import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vite';
import { siteBelow } from '../src/command-line/site-protocols.ts';
import { siteFiles } from '../src/command-line/site-files.ts';

const root = fileURLToPath(new URL('.', import.meta.url));
const folder = fileURLToPath(new URL('../protocols', import.meta.url));

/** Puts the bundled protocols into the site, as the text that they are. A site of files alone cannot save. */
const protocols: Plugin = {
  name: 'protocols',
  async generateBundle() {
    const source = JSON.stringify(await siteBelow(folder, false));
    this.emitFile({ type: 'asset', fileName: siteFiles.protocols, source });
  },
};

/** The rooms as a static site with relative paths, so that it can stand anywhere on a web server. */
export default defineConfig({
  root,
  base: './',
  plugins: [react(), protocols],
  worker: { format: 'es' },
  build: {
    target: 'es2023',
    outDir: '../dist/site',
    emptyOutDir: true,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    reportCompressedSize: false,
    // The editor of the Write room is one chunk of 3.6 MB, which only that room loads. Each room's worker is bundled by itself, about
    // 1 MB: Vite shares no chunks between workers, and a page starts the worker of its room alone.
    chunkSizeWarningLimit: 3800,
    rolldownOptions: { checks: { bundlerTimings: false } },
  },
});
