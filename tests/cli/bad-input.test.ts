import { execFileSync } from 'node:child_process'
import { mkdirSync, readFileSync, readdirSync, truncateSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { choiceOf, knownChoice, openProject, samples } from '../../core/detail'
import { aFolder, sampleText, typed } from './given'

const folder = aFolder()
const at = (name: string, content?: string | Uint8Array): string => {
  const path = join(folder, name)
  if (content !== undefined) writeFileSync(path, content)
  return path
}
const good = sampleText('right-jamb')

const longFile = () => {
  const path = at('long.jamb', '{')
  truncateSync(path, 500 * 1024 * 1024)
  return path
}
const pipe = () => {
  const path = at('pipe.jamb')
  execFileSync('mkfifo', [path])
  return path
}
const aDirectory = () => {
  const path = at('folder.jamb')
  mkdirSync(path)
  return path
}

describe('a file that is no project ends with 2 and says why, without a stack', () => {
  const cases: readonly [says: string, path: () => string, why: RegExp][] = [
    ['that is not there', () => at('nowhere.jamb'), /no such file/],
    ['below a file', () => join(at('file.jamb', 'x'), 'below.jamb'), /no such folder/],
    ['that is a folder', aDirectory, /a folder, not a file/],
    ['that is a pipe', pipe, /no ordinary file/],
    ['of 500 MB', longFile, /longer than any project/],
    ['with nothing in it', () => at('empty.jamb', ''), /damaged|no valid JSON/],
    [
      'of another kind',
      () => at('picture.jamb', Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0xff, 0xfe, 0])),
      /no text/,
    ],
    ['of words', () => at('words.jamb', 'the joint is 12 mm wide'), /no valid JSON/],
    ['cut off', () => at('half.jamb', good.slice(0, good.length / 2)), /no valid JSON/],
    ['of JSON, but not ours', () => at('list.jamb', '[1, 2]'), /no Jambwright file/],
    ['of an empty object', () => at('object.jamb', '{}'), /no Jambwright file/],
    ['nested a hundred thousand deep', () => at('deep.jamb', '['.repeat(100_000)), /nested deeper/],
    ['with a name of 5,000 letters', () => join(folder, 'n'.repeat(5000)), /name is too long/],
  ]
  it.each(cases)('%s', async (_, path, why) => {
    const file = path()
    for (const command of [
      ['check', file],
      ['set', file, 'joint.planned', '12'],
    ]) {
      const { code, out, err } = await typed(...command)
      expect(code).toBe(2)
      expect(out).toBe('')
      expect(err).toMatch(why)
      expect(err).not.toMatch(/^\s+at |Error:/m)
    }
  })

  it('in German where German was asked for', async () => {
    const { err } = await typed('check', at('nowhere.jamb'), '--language', 'de')
    expect(err).toContain('fehlt')
  })
})

describe('a project with mistakes', () => {
  it('has every one named with its place', async () => {
    const project = JSON.parse(good)
    const [opening] = Object.keys(project.openings)
    project.openings[opening ?? ''].width_mm.value = 'wide'
    project.title.name = 12
    project.nonsense = true
    const { code, err } = await typed('check', at('mistakes.jamb', JSON.stringify(project)))
    expect(code).toBe(2)
    expect(err).toContain(`openings.${opening}.width_mm.value`)
    expect(err).toContain('title.name')
    expect(err).toContain('nonsense')
    expect(err.trimEnd().split('\n')).toHaveLength(3)
  })

  it('of any kind ends in words: bytes changed at random never lead to a fault of ours', async () => {
    const bytes = Buffer.from(good)
    await fc.assert(
      fc.asyncProperty(fc.nat(bytes.length - 1), fc.nat(255), fc.nat(200), async (from, byte, length) => {
        const damaged = Uint8Array.from(bytes)
        damaged.fill(byte, from, from + length)
        const { code, err } = await typed('check', at('damaged.jamb', damaged))
        expect([0, 1, 2, 3]).toContain(code)
        expect(err === '').toBe(code !== 2)
      }),
      { numRuns: 100 },
    )
  })
})

describe('a command line that cannot be', () => {
  const cases: readonly [args: readonly string[], why: RegExp][] = [
    [[], /Usage/],
    [['paint'], /unknown command/],
    [['check'], /missing required argument/],
    [['check', 'a', 'b'], /too many arguments/],
    [['check', 'a', '--loud'], /unknown option/],
    [['check', 'a', '--language', 'tlh'], /Allowed choices are en, de/],
    [['samples'], /a folder is needed/],
  ]
  it.each(cases)('%j', async (args, why) => {
    const { code, out, err } = await typed(...args)
    expect(code).toBe(2)
    expect(out).toBe('')
    expect(err).toMatch(why)
  })

  it('a practice that nobody knows is refused with the ones there are', async () => {
    const { code, err } = await typed('check', at('good.jamb', good), '--practice', 'XX')
    expect(code).toBe(2)
    expect(err).toMatch(/“XX”.*DE.*UK/)
  })

  it('help is no fault', async () => {
    const { code, out } = await typed('--help')
    expect(code).toBe(0)
    for (const name of ['check', 'draw', 'set', 'samples']) expect(out).toContain(name)
    expect((await typed('check', '--help')).out).toContain('--practice')
  })
})

describe('set', () => {
  it('states a typed value and keeps the rest of the file', async () => {
    const path = at('set.jamb', good)
    const { code, out } = await typed('set', path, 'joint.planned', '1,2 cm + 1,7')
    expect({ code, out }).toMatchObject({ code: 0 })
    expect(out).toContain('13.7\u00a0mm')
    const lines = (text: string) => text.split('\n').filter(it => !it.includes('digest'))
    const [before, after] = [lines(good), lines(readFileSync(path, 'utf8'))]
    expect(after.filter((line, index) => line !== before[index]).length).toBe(1)
    expect((await typed('check', path)).err).toBe('')
  })

  it('states a word of a list, by its value or its name in either language', async () => {
    const choice = choiceOf('opening.exposure')
    const [sample] = samples.map(it => it.project)
    const opening = Object.keys(sample?.openings ?? {})[0] ?? ''
    const word = sample && choice?.allowed(sample, opening).choices[0]
    for (const said of [word?.value, word?.name.en, word?.name.de]) {
      const path = at('word.jamb', good)
      const { code, err } = await typed('set', path, 'opening.exposure', said ?? '')
      expect({ code, err }).toEqual({ code: 0, err: '' })
      const opened = openProject(readFileSync(path, 'utf8'))
      const now = opened.ok && knownChoice(opened.value.project, { field: 'opening.exposure', part: opening })
      expect(now).toMatchObject({ value: word?.value, origin: 'file' })
    }
  })

  it.each([
    ['joint.planned', '1.200', /thousands or decimals/],
    ['joint.planned', 'wide', /not understood/],
    ['joint.planned', '-3', /outside what is possible/],
    ['joint.colour', '3', /no such value; there are .*joint\.planned/],
    ['layer.thickness', '3', /several parts/],
    ['opening.exposure', 'stormy', /“stormy” is not among/],
  ])('%s %s is refused and leaves the file alone', async (field, value, why) => {
    const path = at('refused.jamb', good)
    const { code, err } = await typed('set', path, field, value)
    expect(code).toBe(2)
    expect(err).toMatch(why)
    expect(readFileSync(path, 'utf8')).toBe(good)
  })
})

describe('samples', () => {
  it('are written, and written again, but never over somebody else’s file', async () => {
    const to = join(folder, 'new', 'samples')
    expect((await typed('samples', '--to', to)).code).toBe(0)
    expect((await typed('samples', '--to', to)).code).toBe(0)
    const [first = ''] = readdirSync(to)
    writeFileSync(join(to, first), 'mine')
    const { code, err } = await typed('samples', '--to', to)
    expect(code).toBe(2)
    expect(err).toContain(first)
    expect(readFileSync(join(to, first), 'utf8')).toBe('mine')
  })

  it('cannot be written into a file', async () => {
    const { code, err } = await typed('samples', '--to', join(at('plain', 'x'), 'below'))
    expect(code).toBe(2)
    expect(err).toContain('plain')
  })
})
