import { chmod } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vite';

const root = fileURLToPath(new URL('..', import.meta.url));
const source = (path: string): string => fileURLToPath(new URL(`../src/${path}`, import.meta.url));

/** Lets a shell run the command line's file by its name. */
const executable: Plugin = {
  name: 'executable',
  writeBundle: async ({ dir }) => chmod(`${dir}/main.js`, 0o755),
};

/** The bundle that is installed: the command line and the library, for Node, with all that they need. */
export default defineConfig({
  root,
  plugins: [executable],
  // Bundled dependencies start faster than some hundred small files looked up in node_modules.
  ssr: { noExternal: true },
  // Read as JSON, the schemas take a tenth of the time that they take as code.
  json: { stringify: true, namedExports: false },
  build: {
    ssr: true,
    target: 'node20',
    outDir: 'dist',
    emptyOutDir: true,
    // A shorter text is read sooner at every start.
    minify: true,
    reportCompressedSize: false,
    rolldownOptions: {
      input: { main: source('command-line/main.ts'), index: source('index.ts') },
      output: {
        format: 'esm',
        entryFileNames: '[name].js',
        chunkFileNames: 'chunks/[name]-[hash].js',
        // What every reading needs stands in one file, as forty small ones take longer to find; what every call needs stands in another.
        codeSplitting: {
          groups: [
            { name: 'call', test: /src\/(document\/limits|problems\/visible)\.ts$/, priority: 1 },
            {
              name: 'reading',
              test: /src\/(vocabulary|document|shape|protocol|logic|series|targets\/evaluator|outcome)\//,
            },
          ],
        },
      },
    },
  },
});
