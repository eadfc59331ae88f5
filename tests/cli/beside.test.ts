import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { applyEdits, samples, saveProject } from '../../core/detail'
import { readByEzdxf } from '../given/a-reader-of-dxf'
import { judged } from '../given/a-reader-of-pdf'
import { aFolder, sampleText, typed } from './given'

const folder = aFolder()
const at = (name: string) => join(folder, name)
for (const file of ['right-jamb', 'foam-only', 'on-consoles'])
  writeFileSync(at(`${file}.jamb`), sampleText(file))
const right = at('right-jamb.jamb')

/** A project with an opening and its copy. */
const twice = (() => {
  const project = samples.find(it => it.file === 'right-jamb')?.project
  const [opening = ''] = Object.keys(project?.openings ?? {})
  const copied = project && applyEdits(project, [{ kind: 'duplicate', part: opening }])
  if (!copied?.ok) throw new Error('an opening can be copied')
  writeFileSync(at('twice.jamb'), saveProject(copied.value))
  return Object.keys(copied.value.openings)
})()

describe('two details on one sheet', () => {
  it.each(['pdf', 'dxf', 'svg'])('out of two files, as %s', async format => {
    const to = at(`beside.${format}`)
    const asked = ['draw', right, '--beside-file', at('foam-only.jamb'), '--to', to, '--language', 'de']
    expect(await typed(...asked)).toEqual({ code: 0, out: `${to}\n`, err: '' })
    const bytes = new Uint8Array(readFileSync(to))
    const said =
      format === 'pdf'
        ? judged(bytes, 'pdftotext', '-layout', 'FILE', '-').said
        : format === 'dxf'
          ? readByEzdxf(bytes).words.join('\n')
          : readFileSync(to, 'utf8')
    for (const words of ['Fehler', 'Ebenen der Fuge geschlossen', 'kein Fehler', 'zwei Details im Vergleich'])
      expect(said).toContain(words)
  })

  it('out of one file, by the names of its openings', async () => {
    const [a = '', b = ''] = twice
    const to = at('two.svg')
    const asked = ['draw', at('twice.jamb'), '--opening', b, '--beside', a, '--cut', 'sill', '--to', to]
    expect(await typed(...asked)).toMatchObject({ code: 0, err: '' })
    expect(readFileSync(to, 'utf8')).toContain('Sill, two details compared')
  })

  const refused: readonly (readonly [string, readonly string[], RegExp])[] = [
    ['that is no other', ['--beside', twice[0] ?? ''], /--beside: .*beside itself/],
    ['that there is not', ['--beside', 'opening-x'], /--beside: no opening is called “opening-x”/],
    ['of a file that there is not', ['--beside-file', at('none.jamb')], /--beside-file: .*no such file/],
    ['of all cuts', ['--beside', twice[1] ?? '', '--cut', 'all'], /--cut: /],
    ['with heat', ['--beside', twice[1] ?? '', '--show', 'heat'], /--show: /],
    ['on an A4', ['--beside', twice[1] ?? '', '--paper', 'A4'], /--paper: two details need an A3/],
    ['at a scale where it does not fit', ['--beside-file', at('on-consoles.jamb'), '--scale', '1:1'], /--scale: .*1:5/],
  ] // prettier-ignore
  it.each(refused)('are refused beside one %s', async (_, options, why) => {
    const { code, out, err } = await typed('draw', at('twice.jamb'), '--to', at('no.svg'), ...options)
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(err).toMatch(why)
  })
})
