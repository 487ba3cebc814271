import { defineConfig, mergeConfig } from 'vitest/config';
import viteConfig from './vite.config.ts';

/** Plain Node unless a file asks for a page with `// @vitest-environment jsdom` in its first line. */
export default mergeConfig(
  viteConfig,
  defineConfig({
    test: {
      environment: 'node',
      // every core: left to itself one of two would stand idle
      maxWorkers: '100%',
      // a 2-core machine under load is slow, not wrong
      testTimeout: 60_000,
      hookTimeout: 60_000,
      include: ['tests/**/*.test.{ts,tsx}'],
      exclude: ['tests/browser/**', 'tests/house/first-load-size.test.ts'],
      restoreMocks: true,
      coverage: { provider: 'v8', include: ['src/engine/**', 'src/data/**'] },
    },
  }),
);
