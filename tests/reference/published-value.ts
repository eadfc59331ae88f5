import { describe, expect, test } from 'vitest'
import { source, type SourceId } from '../../core/sources'

/** A worked value: whose it is, what goes in, what has to come out, and one input that, spoiled, makes it fail. */
export type PublishedValue<In extends object> = {
  readonly says: string
  readonly by: SourceId
  readonly given: In
  readonly compute: (given: In) => number
  readonly expected: number
  readonly within: number
  readonly spoiled: Partial<In>
}

/** A case in its own terms; `publishedValues` runs cases of different inputs in one table. */
export const publishedValue = <In extends object>(it: PublishedValue<In>): Runnable => ({
  says: `${it.says} (${source(it.by).title.en})`,
  miss: Math.abs(it.compute(it.given) - it.expected),
  spoiledMiss: Math.abs(it.compute({ ...it.given, ...it.spoiled }) - it.expected),
  within: it.within,
})

type Runnable = {
  readonly says: string
  readonly miss: number
  readonly spoiledMiss: number
  readonly within: number
}

/** Every value comes out as published, and with its spoiled input it does not. */
export const publishedValues = (about: string, cases: readonly Runnable[]): void => {
  describe(about, () => {
    test.each(cases)('$says', ({ miss, within }) => expect(miss).toBeLessThanOrEqual(within))
    test.each(cases)('a spoiled input would be seen: $says', ({ spoiledMiss, within }) =>
      expect(spoiledMiss).toBeGreaterThan(within),
    )
  })
}
