import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['**/*.test.ts'],
    exclude: ['editor/**', 'bench/**', '**/node_modules/**'],
    testTimeout: 300_000,
    hookTimeout: 300_000,
  },
});
