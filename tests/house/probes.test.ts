import { existsSync, readdirSync } from 'node:fs'
import ts from 'typescript'
import { describe, expect, it } from 'vitest'
import { root } from './sources'

/** What core must not reach: screen, process, network, console, clock of the machine, file names of Node. */
const outside = ['document', 'window', 'process', 'fetch', 'console', 'Buffer', 'setTimeout', 'localStorage']

/** A file that uses all of it, one a line, and pulls in the whole room, in case the room brings foreign types along. */
const probe = [
  "import * as room from './index'",
  ...outside.map(name => `export const uses_${name} = ${name}`),
  'export const fine = [room, Math.PI, new Map<string, number>()]',
].join('\n')

const rooms = readdirSync(`${root}/core`)
  // An empty folder is no room yet: git does not even keep it.
  .filter(room => existsSync(`${root}/core/${room}/index.ts`))

/** The lines of each room's probe that do not compile. */
const refusedLines = (): ReadonlyMap<string, readonly number[]> => {
  const { options } = ts.parseJsonConfigFileContent(
    ts.readConfigFile(`${root}/core/tsconfig.json`, path => ts.sys.readFile(path)).config,
    ts.sys,
    `${root}/core`,
  )
  const isProbe = (path: string) => path.endsWith('/probe.ts')
  const host = ts.createCompilerHost(options)
  const withProbes: ts.CompilerHost = {
    ...host,
    fileExists: path => isProbe(path) || host.fileExists(path),
    readFile: path => (isProbe(path) ? probe : host.readFile(path)),
    getSourceFile: (path, language) =>
      isProbe(path) ? ts.createSourceFile(path, probe, language) : host.getSourceFile(path, language),
  }
  const paths = rooms.map(room => `${root}/core/${room}/probe.ts`)
  const program = ts.createProgram(paths, options, withProbes)
  return new Map(
    rooms.map((room, at) => {
      const file = program.getSourceFile(paths[at] ?? '')
      const found = file ? program.getSemanticDiagnostics(file) : []
      return [room, found.map(it => (file?.getLineAndCharacterOfPosition(it.start ?? 0).line ?? 0) + 1)]
    }),
  )
}

describe('what lies outside does not compile in core', () => {
  const refused = refusedLines()
  it.each(rooms)('%s', room => {
    expect(refused.get(room)).toEqual(outside.map((_, at) => at + 2))
  })
})
