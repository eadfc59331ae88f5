import { describe, expect, test } from 'vitest'
import {
  besideOf,
  type Disk,
  openProject,
  previousOf,
  samples,
  saveProject,
  saveSafely,
} from '../../../core/detail'

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text)
const textOf = (bytes: Uint8Array): string => new TextDecoder().decode(bytes)
const opens = (bytes: Uint8Array): boolean => openProject(textOf(bytes)).ok
const [older, newer] = samples.map(it => bytesOf(saveProject(it.project)))

/** A disk in memory that stops at a call: what it was about to do is not done, or half done where it writes. */
const diskThatStops = (files: Map<string, Uint8Array>, at: number, how: 'dies' | 'fails') => {
  let calls = 0
  let dead = false
  const step = async <T>(half: () => void, whole: () => T): Promise<T> => {
    if (dead) throw new Error('the machine is off')
    calls += 1
    if (calls === at) {
      half()
      dead = how === 'dies'
      throw new Error(how === 'dies' ? 'the machine went off' : 'no space left')
    }
    return whole()
  }
  const disk: Disk = {
    write: (path, bytes) =>
      step(
        () => files.set(path, bytes.slice(0, Math.floor(bytes.length / 2))),
        () => void files.set(path, bytes),
      ),
    read: path => step(nothing, () => files.get(path) ?? new Uint8Array()),
    exists: path => step(nothing, () => files.has(path)),
    rename: (from, to) =>
      step(nothing, () => {
        files.set(to, files.get(from) ?? new Uint8Array())
        files.delete(from)
      }),
    remove: path => step(nothing, () => void files.delete(path)),
  }
  return { disk, count: () => calls }
}
const nothing = (): void => undefined

const saved = async (at: number, how: 'dies' | 'fails') => {
  if (!older || !newer) throw new Error('two samples are needed')
  const files = new Map([['a.jamb', older]])
  const { disk, count } = diskThatStops(files, at, how)
  const result = await saveSafely(disk, 'a.jamb', newer, opens)
  return { files, result, calls: count() }
}

describe('saving', () => {
  test('puts the new file in its place and keeps the one before', async () => {
    const { files, result } = await saved(Infinity, 'fails')
    expect(result.ok).toBe(true)
    expect(files.get('a.jamb')).toEqual(newer)
    expect(files.get(previousOf('a.jamb'))).toEqual(older)
    expect([...files.keys()].sort()).toEqual(['a.jamb', previousOf('a.jamb')])
  })

  test('leaves a file that opens wherever the machine stops', async () => {
    const { calls } = await saved(Infinity, 'dies')
    for (let at = 1; at <= calls; at++) {
      const { files, result } = await saved(at, 'dies')
      expect(result.ok, `stopped at call ${at}`).toBe(false)
      expect(opens(files.get('a.jamb') ?? new Uint8Array()), `stopped at call ${at}`).toBe(true)
    }
  })

  test('leaves the old file and no half one wherever a call fails, and says which', async () => {
    const { calls } = await saved(Infinity, 'fails')
    for (let at = 1; at <= calls; at++) {
      const { files, result } = await saved(at, 'fails')
      expect(files.get('a.jamb'), `failed at call ${at}`).toEqual(older)
      expect(files.has(besideOf('a.jamb')), `failed at call ${at}`).toBe(false)
      expect(result.ok ? '' : result.problems[0].say.en).toContain('no space left')
    }
  })

  test('refuses to replace a file by bytes that do not open', async () => {
    if (!older) throw new Error('a sample is needed')
    const files = new Map([['a.jamb', older]])
    const { disk } = diskThatStops(files, Infinity, 'fails')
    const result = await saveSafely(disk, 'a.jamb', bytesOf('{'), opens)
    expect(result.ok).toBe(false)
    expect(files.get('a.jamb')).toEqual(older)
  })
})
