import { existsSync, readFileSync, readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { root, textOf } from './sources'

/** What a guide puts between backticks and looks like a path from the root of the project. */
const pathsIn = (text: string): readonly string[] => [
  ...new Set(
    [...text.matchAll(/`([^`\s]+)`/g), ...text.matchAll(/\]\(([^)\s]+)\)/g)]
      .map(it => it[1] ?? '')
      .filter(
        it =>
          /^(core|app|tests|assets|out|\.ci)\/|^[\w.-]+\.(md|json|cjs|config\.ts)$/.test(it) &&
          !it.includes('<'),
      )
      .filter(it => !it.startsWith('out/')),
  ),
]

describe.each(['DEVELOPERS.md', 'README.md'])('%s', guide => {
  it('names only what there is', () => {
    const paths = pathsIn(textOf(guide))
    expect(paths.length).toBeGreaterThan(guide === 'DEVELOPERS.md' ? 30 : 2)
    expect(paths.filter(path => !existsSync(`${root}/${path}`))).toEqual([])
  })

  it('names only commands that there are', () => {
    const { scripts }: { scripts: Record<string, string> } = JSON.parse(
      readFileSync(`${root}/package.json`, 'utf8'),
    )
    const named = [...textOf(guide).matchAll(/npm run (?:-s )?([a-z:-]+)/g)].map(it => it[1] ?? '')
    expect(named.filter(it => !(it in scripts))).toEqual([])
  })
})

it('every room of core and of the app is on the map in DEVELOPERS.md', () => {
  const rooms = ['core', 'app'].flatMap(top =>
    readdirSync(`${root}/${top}`, { withFileTypes: true })
      .filter(it => it.isDirectory() && readdirSync(`${root}/${top}/${it.name}`).length !== 0)
      .map(it => `${top}/${it.name}`),
  )
  const guide = textOf('DEVELOPERS.md')
  expect(rooms.filter(room => !guide.includes(`\`${room}\``))).toEqual([])
})
