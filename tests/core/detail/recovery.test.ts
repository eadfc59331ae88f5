import { describe, expect, test } from 'vitest'
import {
  type Copy,
  copiesIn,
  digestOf,
  generations,
  keepCopy,
  daysKept,
  letGoOf,
  openProject,
  samples,
  saveProject,
} from '../../../core/detail'
import { aShelf } from '../../given/a-shelf'

const [first, second] = samples.map(it => it.project)
if (first === undefined || second === undefined) throw new Error('two samples are needed')

const noon = new Date('2026-03-01T12:00:00.000Z')
const after = (seconds: number): Date => new Date(noon.getTime() + seconds * 1000)
const aCopy = (its: Partial<Copy> = {}): Copy => ({
  document: 'one',
  stamp: '',
  name: 'house.jamb',
  at: noon.toISOString(),
  text: saveProject(first),
  ...its,
})

describe('a copy of unsaved work', () => {
  test('comes back as it was, with where its file lies', async () => {
    const { shelf } = aShelf()
    const copy = aCopy({ place: '/home/x/Häuser/house.jamb' })
    expect(await keepCopy(shelf, 'kept', copy)).toMatchObject({ ok: true })
    expect(await copiesIn(shelf, 'kept', after(60))).toEqual([copy])
  })

  test('is the newest of its document, and documents stand newest first', async () => {
    const { shelf } = aShelf()
    for (const [document, s] of [
      ['one', 0],
      ['two', 5],
      ['one', 9],
    ] as const)
      await keepCopy(shelf, 'kept', aCopy({ document, at: after(s).toISOString() }))
    const found = await copiesIn(shelf, 'kept', after(60))
    expect(found.map(it => [it.document, it.at])).toEqual([
      ['one', after(9).toISOString()],
      ['two', after(5).toISOString()],
    ])
  })

  test(`is kept in ${generations} generations, and gives way to the one before where it is damaged`, async () => {
    const { shelf, files } = aShelf()
    for (let s = 0; s < 8; s++) await keepCopy(shelf, 'kept', aCopy({ at: after(s).toISOString() }))
    expect(files.size).toBe(generations)
    const newest = [...files.keys()].toSorted().at(-1) ?? ''
    files.set(newest, (files.get(newest) ?? new Uint8Array()).slice(0, 200))
    expect((await copiesIn(shelf, 'kept', after(60))).map(it => it.at)).toEqual([after(6).toISOString()])
  })

  test('that somebody changed by a letter is not offered', async () => {
    const { shelf, files } = aShelf()
    await keepCopy(shelf, 'kept', aCopy())
    for (const [path, bytes] of files)
      files.set(path, new TextEncoder().encode(new TextDecoder().decode(bytes).replace('W-07', 'W-08')))
    expect(await copiesIn(shelf, 'kept', after(60))).toEqual([])
  })

  test(`ages out after ${daysKept} days`, async () => {
    const { shelf, files } = aShelf()
    await keepCopy(shelf, 'kept', aCopy())
    const day_s = 24 * 3600
    expect(await copiesIn(shelf, 'kept', after(daysKept * day_s - 1))).toHaveLength(1)
    expect(await copiesIn(shelf, 'kept', after(daysKept * day_s + 1))).toEqual([])
    expect(files.size).toBe(0)
  })

  test('that says nothing but what the file holds is not offered', async () => {
    const { shelf } = aShelf()
    await keepCopy(shelf, 'kept', aCopy({ stamp: digestOf(first) }))
    expect(await copiesIn(shelf, 'kept', after(1))).toEqual([])
    await keepCopy(shelf, 'kept', aCopy({ stamp: digestOf(second) }))
    expect(await copiesIn(shelf, 'kept', after(1))).toHaveLength(1)
  })

  test.each(samples)(
    'of $file has the digest that its file will have, in whatever order its keys were set',
    ({ project }) => {
      const read = openProject(saveProject(project))
      expect(read.ok && digestOf(read.value.project)).toBe(digestOf(project))
    },
  )

  test('goes when it is let go of, and others stay', async () => {
    const { shelf, files } = aShelf()
    for (let round = 0; round < 20; round++) {
      await keepCopy(shelf, 'kept', aCopy({ at: after(round).toISOString() }))
      await letGoOf(shelf, 'kept', 'one')
      expect(await copiesIn(shelf, 'kept', after(60))).toEqual([])
    }
    files.set('kept/note.txt', new Uint8Array())
    await keepCopy(shelf, 'kept', aCopy({ document: 'two' }))
    await letGoOf(shelf, 'kept', 'one')
    expect(files.size).toBe(2)
  })

  test('that cannot be written is a refusal with its reason, and the one before stays', async () => {
    let full = false
    const { shelf } = aShelf({ isFull: () => full })
    await keepCopy(shelf, 'kept', aCopy())
    full = true
    const refused = await keepCopy(shelf, 'kept', aCopy({ at: after(9).toISOString() }))
    expect(refused.ok ? '' : refused.problems[0].say.en).toContain('no space left')
    expect(await copiesIn(shelf, 'kept', after(60))).toHaveLength(1)
  })

  test('of a name that would lead out of its folder is never written', async () => {
    const { shelf, files } = aShelf()
    await expect(keepCopy(shelf, 'kept', aCopy({ document: '../out' }))).rejects.toThrow('does not name')
    expect(files.size).toBe(0)
  })
})
