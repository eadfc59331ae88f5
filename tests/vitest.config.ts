import { availableParallelism } from 'node:os'
import { defineConfig } from 'vitest/config'
import { BaseSequencer, type TestSpecification } from 'vitest/node'

/** Files that stand in for what another program gives: only these load everything anew, the others share what is loaded. */
const alone = ['tests/main/**/*.test.ts', 'tests/e2e/desktop.e2e.test.ts', 'tests/cli/bundle.test.ts']

/** Files in which a browser works. */
const browsing = 'tests/e2e/**/*.test.ts'

/** Begun first, since they take longest: no core is left alone with one of them at the end. */
const long = /properties\/heat\.test|e2e\/(desktop|editing|panels|looks)/

class LongFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const usual = await super.sort(files)
    return [...usual.filter(it => long.test(it.moduleId)), ...usual.filter(it => !long.test(it.moduleId))]
  }
}

/** A bench prints times; it never decides whether the project is sound. */
const never = ['tests/bench/**', 'node_modules/**']

// A default export is what the tool asks for.
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    pool: 'threads',
    // Not one less than cores, as the tool has it: half a machine would sleep.
    maxWorkers: Math.max(2, availableParallelism()),
    sequence: { sequencer: LongFirst },
    passWithNoTests: false,
    allowOnly: false,
    // A browser on a busy machine may miss an event. Where nobody looks on, a test is tried once more; a fault fails twice.
    retry: process.env['CI'] === 'true' ? 1 : 0,
    testTimeout: 60_000,
    hookTimeout: 60_000,
    projects: [
      { extends: true, test: { name: 'alone', include: alone, exclude: never } },
      {
        extends: true,
        test: { name: 'browser', include: [browsing], exclude: [...never, ...alone], isolate: false },
      },
      {
        extends: true,
        test: {
          name: 'shared',
          include: ['tests/**/*.test.ts'],
          exclude: [...never, ...alone, browsing],
          isolate: false,
        },
      },
    ],
  },
})
