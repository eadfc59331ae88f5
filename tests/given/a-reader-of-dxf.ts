import { execFileSync } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { z } from 'zod'

const counts = z.record(z.string(), z.number())

const readDxf = z.object({
  version: z.string(),
  errors: z.array(z.string()),
  fixes: z.array(z.string()),
  counts: z.record(z.string(), counts),
  areas: z.record(z.string(), z.number()),
  materials: z.record(z.string(), z.string().nullable()),
  sizes: z.array(z.object({ measures: z.number(), says: z.string(), block: z.string() })),
  sizeWords: z.array(z.array(z.string())),
  /** sizes on the sheet itself: what they say they measure, how long they are there, and what their style makes of that */
  onPaper: z.array(z.object({ measures: z.number(), long: z.number(), times: z.number() })),
  /** the layers that each viewport leaves out */
  frozen: z.array(z.array(z.string())),
  numbers: z.array(z.string()),
  words: z.array(z.string()),
  attributes: z.record(z.string(), z.string()),
  viewports: z.array(z.array(z.number())),
  lowest: z.array(z.number()),
  highest: z.array(z.number()),
  layers: z.record(z.string(), z.tuple([z.number(), z.string(), z.boolean(), z.number()])),
  linetypes: z.record(z.string(), z.array(z.number())),
  patterns: counts,
  /** of each set of lines of each hatch: pattern, angle, a place, the step to the next line, dashes */
  rows: z.array(
    z.tuple([z.string(), z.number(), z.number(), z.number(), z.number(), z.number()], z.number()),
  ),
})

/** A DXF as another library reads it. */
export type ReadDxf = z.infer<typeof readDxf>

/** A file that holds nothing. */
export const nothing: ReadDxf = {
  version: '', errors: [], fixes: [], counts: {}, areas: {}, materials: {}, sizes: [], sizeWords: [], onPaper: [], frozen: [], numbers: [], words: [],
  attributes: {}, viewports: [], lowest: [], highest: [], layers: {}, linetypes: {}, patterns: {}, rows: [],
} // prettier-ignore

/** Reads a DXF with ezdxf, which Debian's own Python has. A file that it refuses throws. */
export const readByEzdxf = (bytes: Uint8Array): ReadDxf => {
  const [read] = readAllByEzdxf([bytes])
  if (read === undefined) throw new Error('ezdxf said nothing')
  return read
}

/** Reads files with one start of Python: it takes longer to start than to read. */
export const readAllByEzdxf = (files: readonly Uint8Array[]): readonly ReadDxf[] => {
  const folder = mkdtempSync(join(tmpdir(), 'dxf-'))
  const paths = files.map((bytes, at) => {
    const path = join(folder, `${at}.dxf`)
    writeFileSync(path, bytes)
    return path
  })
  const said = execFileSync('/usr/bin/python3', ['tests/given/read-dxf.py', ...paths], {
    encoding: 'utf8',
    maxBuffer: 1 << 30,
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  return said
    .trim()
    .split('\n')
    .map(it => readDxf.parse(JSON.parse(it)))
}

/** The groups of a DXF: code and value, as they stand in its lines. */
export const groupsOf = (text: string): readonly (readonly [code: number, value: string])[] => {
  const lines = text.split('\r\n')
  return Array.from({ length: Math.floor(lines.length / 2) }, (_, at) => [
    Number(lines[2 * at]),
    lines[2 * at + 1] ?? '',
  ])
}
