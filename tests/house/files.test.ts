import { describe, expect, it } from 'vitest'
import { isSource, projectFiles, textOf } from './sources'

const files = projectFiles()

describe('files', () => {
  it('of source are short enough to read in one go', () => {
    const long = files.filter(isSource).map(path => [path, textOf(path).split('\n').length - 1] as const)
    expect(long.filter(([, lines]) => 400 < lines)).toEqual([])
  })

  it('have names that say what they are about', () => {
    const bare = files.filter(path => /(^|\/)(utils?|helpers?|common|shared|misc)(\/|\.[a-z]+$)/i.test(path))
    expect(bare).toEqual([])
  })

  it('of source are named in small letters with hyphens, components like the thing they show', () => {
    const odd = files
      .filter(isSource)
      .map(path => [path, path.split('/').at(-1) ?? ''] as const)
      .filter(([, name]) => !/^[.a-z0-9-]+\.(ts|mts|mjs|cjs)$|^[A-Za-z0-9-]+\.svelte(\.ts)?$/.test(name))
    expect(odd.map(([path]) => path)).toEqual([])
  })

  it('at the top level are the ones a newcomer expects', () => {
    const top = new Set(files.map(path => path.split('/')[0] ?? '').filter(it => !it.startsWith('.')))
    const expected = [
      'DEVELOPERS.md', 'README.md', 'app', 'assets', 'core', 'electron.config.ts', 'package-lock.json', 'package.json', 'tests', 'tsconfig.json',
    ] // prettier-ignore
    expect([...top].toSorted()).toEqual(expected)
  })
})

describe('texts', () => {
  /** Written in two halves, so that this file does not hold what it looks for. */
  const strangers = [
    ['tran', 'script'],
    ['seed ', 'document'],
    ['/wo', 'rk/'],
    ['.lib', 'rary/'],
    ['design ', 'paper'],
    ['architecture', '.md'],
    ['house-', 'style.md'],
    ['/tm', 'p/w/'],
  ].map(it => it.join(''))

  it.each(strangers)('speak of the project alone: nothing says "%s"', word => {
    const found = files.filter(isText).filter(path => textOf(path).toLowerCase().includes(word))
    expect(found).toEqual([])
  })

  it('leave nothing for later', () => {
    const later = new RegExp(
      ['\\bTO', 'DO\\b|\\bFIX', 'ME\\b|\\.sk', 'ip\\(|\\.on', 'ly\\(|@ts-ig', 'nore'].join(''),
    )
    const found = files.filter(isSource).filter(path => later.test(textOf(path)))
    expect(found).toEqual([])
  })
})

const isText = (path: string): boolean =>
  /\.(ts|mts|mjs|cjs|svelte|md|json|css|html|txt|csv|svg|yml)$|^\.|\/run$/.test(path) &&
  path !== 'package-lock.json'
