import { spawnSync } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { saveProject } from '../../core/detail'
import { cutsSheet } from '../../core/drawing'
import { formats } from '../../core/export'
import { openFile } from '../../core/intake'
import { check } from '../../core/rules'
import { cutsOf } from '../given/sample-cuts'
import { firstSample, sampleSheets, sheetFonts, sheetsOf } from '../given/sample-sheets'
import type { Bench } from './bench'

const [first, ...more] = sampleSheets({ language: 'en', palette: 'colour' }).map(it => it.drawing)
if (first === undefined) throw new Error('there is no sheet')

const bench = (name: string, wanted_ms: number, run: () => unknown): Bench => ({
  name,
  wanted_ms,
  warmUp: 5,
  runs: 20,
  run,
})

const written = (id: string, count: number): (() => unknown) => {
  const format = formats.find(it => it.id === id)
  if (format === undefined) throw new Error(`there is no ${id}`)
  const sheets = sheetsOf(first, ...more.slice(0, count - 1))
  return () => format.write(sheets, sheetFonts)
}

const folder = mkdtempSync(join(tmpdir(), 'jambwright-bench-'))
const project = join(folder, 'detail.jamb')
const { project: sample } = firstSample()
writeFileSync(project, saveProject(sample))
const drawTo = (name: string): (() => unknown) => {
  const to = join(folder, name)
  const given = ['app/cli/run.mjs', 'draw', project, '--to', to, '--ink', 'colour']
  return () => spawnSync(process.execPath, given)
}

/** Opening needs a sheet to open: the first run writes it. */
const reopened = (): (() => unknown) => {
  const sheet = written('pdf', 1)()
  return async () => {
    const bytes = await sheet
    if (!(bytes instanceof Uint8Array) || !openFile(bytes).ok) throw new Error('the sheet does not open')
  }
}

/** Head, jamb and sill on one sheet: the cuts are made once, the sheet is laid out each time. */
const threeCuts = cutsOf(sample)
const checked = check(sample)

/** What writing a sheet costs in each format, and opening one again. */
export const exportSheets: readonly Bench[] = [
  bench('lay out three cuts on one sheet', 60, () =>
    cutsSheet(sample, threeCuts, { language: 'en', palette: 'colour', report: checked }),
  ),
  bench('write a sheet as PDF', 200, written('pdf', 1)),
  bench('write three sheets as PDF', 400, written('pdf', 3)),
  bench('write a sheet as DXF', 50, written('dxf', 1)),
  bench('write a sheet as SVG', 30, written('svg', 1)),
  bench('open the project in a PDF sheet', 50, reopened()),
  { ...bench('draw a sheet to PDF as a process of its own', 1200, drawTo('sheet.pdf')), warmUp: 1, runs: 8 },
  { ...bench('draw a sheet to DXF as a process of its own', 1200, drawTo('sheet.dxf')), warmUp: 1, runs: 8 },
]
