import { describe, expect, it } from 'vitest'
import { referenceCases } from './all'
import { holds } from './subject'

describe('published cases', () => {
  it.each(referenceCases.map(it => [it.id, it] as const))('%s gives its published answers', (_id, it) => {
    expect(it.run().filter(compared => !holds(compared))).toEqual([])
  })

  it.each(referenceCases.map(it => [it.id, it] as const))(
    '%s fails when its named input is spoiled',
    (_id, it) => {
      expect(it.runSpoiled().some(compared => !holds(compared))).toBe(true)
    },
  )
})
