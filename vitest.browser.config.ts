import { defineConfig } from 'vitest/config';

/** What can only be tested on the built page in a real browser; `vite build` must have run. */
export default defineConfig({
  test: {
    environment: 'node',
    include: ['tests/browser/**/*.test.ts', 'tests/house/first-load-size.test.ts'],
    globalSetup: ['tests/browser/support/serve.ts'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // one page at a time: gestures and repaint must not fight for the machine
    fileParallelism: false,
  },
});
