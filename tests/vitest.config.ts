import { availableParallelism } from 'node:os'
import { defineConfig } from 'vitest/config'

// A default export is what the tool asks for.
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts'],
    // Bench prints times; it never decides whether the project is sound.
    exclude: ['tests/bench/**', 'node_modules/**'],
    pool: 'threads',
    // Browser tests wait more than they work: with one worker less than cores, as the tool has it, half a machine sleeps.
    maxWorkers: Math.max(2, availableParallelism()),
    passWithNoTests: false,
    allowOnly: false,
    // A browser on a busy machine may miss an event. Where nobody looks on, a test is tried once more; a fault fails twice.
    retry: process.env['CI'] === 'true' ? 1 : 0,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
})
