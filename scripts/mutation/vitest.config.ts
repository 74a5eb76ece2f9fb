import { defineConfig } from 'vitest/config';

/**
 * The tests that a changed rule must fail, for `npm run test:mutation`. The long random ones are left out: each would be run
 * again for every one of the thousands of changes, and what only they can see is not seen by a reader either.
 */
export default defineConfig({
  test: {
    environment: 'node',
    include: ['tests/engine/**/*.test.ts'],
    exclude: [
      '**/node_modules/**',
      'tests/engine/properties.test.ts',
      'tests/engine/anyDrawing.test.ts',
      'tests/engine/edits/properties.test.ts',
      'tests/engine/published/sharingOut.test.ts',
    ],
    testTimeout: 20_000,
  },
});
