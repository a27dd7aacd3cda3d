import { defineConfig } from 'vitest/config';

/** Other programs judge our files; they must be installed beside Node. */
export default defineConfig({
  test: {
    include: ['tests/outside/**/*.test.ts'],
    testTimeout: 120_000,
    // a browser has to start, and the page to be built
    hookTimeout: 120_000,
  },
});
