import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { faultPlugin } from '../tests/faults/plugin.ts';

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  plugins: [faultPlugin()],
  test: {
    include: ['tests/**/*.test.ts'],
    allowOnly: false,
    passWithNoTests: false,
    // Long enough for a busy machine of two cores; what must be quick is measured by its own test.
    testTimeout: 60_000,
  },
});
