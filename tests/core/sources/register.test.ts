import { expect, test } from 'vitest'
import { cite, source, sourceIds, sourceKinds } from '../../../core/sources'

test.each(sourceIds)('%s has a kind and a title in both languages', id => {
  const it = source(id)
  expect(sourceKinds).toContain(it.kind)
  expect(it.title.en.length).toBeGreaterThan(5)
  expect(it.title.de.length).toBeGreaterThan(5)
  expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/)
})

test('no two sources have the same title', () => {
  expect(new Set(sourceIds.map(id => source(id).title.en)).size).toBe(sourceIds.length)
})

test('a citation of something that is not registered does not compile', () => {
  // @ts-expect-error no such source
  expect(cite('hearsay', 'published').source).toBe('hearsay')
})
