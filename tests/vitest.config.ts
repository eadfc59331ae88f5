import { defineConfig } from 'vitest/config'

// A default export is what the tool asks for.
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts'],
    // Bench prints times; it never decides whether the project is sound.
    exclude: ['tests/bench/**', 'node_modules/**'],
    pool: 'threads',
    passWithNoTests: false,
    allowOnly: false,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
})
