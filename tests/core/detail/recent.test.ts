import { describe, expect, test } from 'vitest'
import {
  afterOutsideChange,
  contentDigest,
  type Recent,
  readRecents,
  recentLength,
  withoutRecent,
  withRecent,
} from '../../../core/detail'

const aRecent = (place: string, its: Partial<Recent> = {}): Recent => ({
  place,
  name: `${place}.jamb`,
  at: '2026-03-01T12:00:00.000Z',
  about: { title: 'Weir House', of: 'brick' },
  ...its,
})
const many = (count: number): readonly Recent[] =>
  Array.from({ length: count }, (_, at) => aRecent(`p${at}`)).reduce(
    (list: readonly Recent[], it) => withRecent(list, it),
    [],
  )

describe('the list of recent files', () => {
  test(`holds ${recentLength}, the newest first`, () => {
    const list = many(14)
    expect(list).toHaveLength(recentLength)
    expect(list[0]?.place).toBe('p13')
  })
  test('names a file once, with what was last known of it', () => {
    const about = { title: 'Weir House', of: 'brick', worst: { verdict: 'not-met', count: 2 } }
    const list = withRecent(many(3), aRecent('p0', { about }))
    expect(list.map(it => it.place)).toEqual(['p0', 'p2', 'p1'])
    expect(list[0]?.about).toEqual(about)
  })
  test('lets one go', () => {
    expect(withoutRecent(many(3), 'p1').map(it => it.place)).toEqual(['p2', 'p0'])
  })
  test('is read as it was written', () => {
    expect(readRecents(JSON.stringify(many(4)))).toEqual(many(4))
  })
  test.each(['', 'null', '{}', '[{"place":"a"}]', '[[', JSON.stringify([{ ...aRecent('a'), at: 'today' }])])(
    'is empty where it cannot be read: %s',
    stored => {
      expect(readRecents(stored)).toEqual([])
    },
  )
})

describe('a file that was changed elsewhere', () => {
  const [mine, theirs] = ['mine', 'theirs'].map(it => contentDigest(new TextEncoder().encode(it)))
  if (mine === undefined || theirs === undefined) throw new Error('two contents are needed')
  test.each([
    ['an own write', { known: mine, found: mine, isUnsaved: true }, 'nothing'],
    ['a touch without a change', { known: mine, found: mine, isUnsaved: false }, 'nothing'],
    ['a file that was taken away', { known: mine, found: undefined, isUnsaved: true }, 'nothing'],
    ['a project without a file', { known: '', found: theirs, isUnsaved: true }, 'nothing'],
    ['another content, no work at stake', { known: mine, found: theirs, isUnsaved: false }, 'tell'],
    ['both changed', { known: mine, found: theirs, isUnsaved: true }, 'ask'],
  ] as const)('%s', (_, it, then) => {
    expect(afterOutsideChange(it)).toBe(then)
  })
})
