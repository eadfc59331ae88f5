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
    // A browser on a busy machine may miss an event. Where nobody looks on, a test is tried once more; a fault fails twice.
    retry: process.env['CI'] === 'true' ? 1 : 0,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
})
