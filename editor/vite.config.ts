import react from '@vitejs/plugin-react';
import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vite';
import { siteAssets } from '../src/command-line/site-assets.ts';
import type { Terminal } from '../src/command-line/terminal.ts';

const root = fileURLToPath(new URL('.', import.meta.url));
const folder = fileURLToPath(new URL('../protocols', import.meta.url));

/** Says when the site is made: a ward's patients are read with what is in force then. What fails is said with it, and in the rooms. */
function thisMoment(): Terminal {
  const now = `${new Date().toISOString().slice(0, 16)}:00Z`;
  const err = (text: string): void => void process.stderr.write(text);
  const stdin = (): Promise<string> => Promise.resolve('');
  return { out: err, err, stdin, width: 80, colour: false, today: now.slice(0, 10), now, seenFolder: null };
}

/** Puts the bundled protocols and their sealed editions into the site, as the text that they are. A site of files alone cannot save. */
const protocols: Plugin = {
  name: 'protocols',
  async generateBundle() {
    for (const asset of await siteAssets(folder, thisMoment())) this.emitFile({ type: 'asset', ...asset });
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
