import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { faultPlugin } from '../tests/faults/plugin.ts';

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  plugins: [faultPlugin()],
  test: {
    include: ['tests/**/*.test.ts'],
    allowOnly: false,
    // On a machine of two cores the default is one at a time.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    passWithNoTests: false,
    // Long enough for a busy machine of two cores; what must be quick is measured by its own test.
    testTimeout: 60_000,
  },
});
