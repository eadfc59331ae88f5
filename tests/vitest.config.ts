import { availableParallelism } from 'node:os'
import { defineConfig } from 'vitest/config'

/** Rooms whose tests start no other program and open no window: nothing there outlives a test, so they share what is loaded. */
const pure = 'tests/{core,editor,fuzz,golden,properties,scenarios}/**/*.test.ts'

/** A bench prints times; it never decides whether the project is sound. */
const never = ['tests/bench/**', 'node_modules/**']

// A default export is what the tool asks for.
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    pool: 'threads',
    // Browser tests wait more than they work: with one worker less than cores, as the tool has it, half a machine sleeps.
    maxWorkers: Math.max(2, availableParallelism()),
    passWithNoTests: false,
    allowOnly: false,
    // A browser on a busy machine may miss an event. Where nobody looks on, a test is tried once more; a fault fails twice.
    retry: process.env['CI'] === 'true' ? 1 : 0,
    testTimeout: 60_000,
    hookTimeout: 60_000,
    projects: [
      { extends: true, test: { name: 'pure', include: [pure], exclude: never, isolate: false } },
      { extends: true, test: { name: 'whole', include: ['tests/**/*.test.ts'], exclude: [...never, pure] } },
    ],
  },
})
