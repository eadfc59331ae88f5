import { describe, expect, it } from 'vitest'
import { applyEdits } from '../../../core/detail'
import {
  type Beside,
  besideScales,
  besideSheet,
  type Drawing,
  flatten,
  sheetProblems,
} from '../../../core/drawing'
import { aDetail } from '../../given/a-detail-beside'

/** What is not met at the side of a detail, by its titles: its own zone, its side, its opening. */
const notMet = ({ report, place }: Beside): readonly string[] =>
  report.findings
    .filter(
      it => it.verdict === 'not-met' && (it.where.side ?? place.side) === place.side && !it.where.corner,
    )
    .map(it => it.title.en)
    .toSorted()

const viewsOn = (drawing: Drawing) => drawing.marks.flatMap(it => (it.kind === 'view' ? [it] : []))
const wordsOn = (drawing: Drawing) => drawing.marks.flatMap(it => (it.kind === 'text' ? [it] : []))

const pairs = [
  ['right-jamb', 'foam-only', 'left'],
  ['right-jamb', 'tight-outside', 'left'],
  ['right-jamb', 'frame-too-large', 'right'],
  ['on-consoles', 'soft-flank', 'sill'],
] as const

describe.each(pairs)('%s beside %s, %s', (right, wrong, side) => {
  const pair = [aDetail(right, side), aDetail(wrong, side)] as const
  const drawing = besideSheet(pair, { language: 'en', palette: 'black' })

  it('stand at one scale on one A3, the largest that both fit at', () => {
    expect(drawing.size_mm).toEqual([420, 297])
    const scales = viewsOn(drawing).flatMap(it => (it.enlarged ? [] : [it.scale]))
    expect(scales).toEqual([scales[0], scales[0]])
    expect(scales[0]).toBe(besideScales(pair, { language: 'en' })[0])
    expect(sheetProblems(pair[0].project, drawing)).toEqual([])
  })

  it('have both joints drawn once more where they are small, as large and with as much round them', () => {
    const [main] = viewsOn(drawing)
    const joints = viewsOn(drawing).filter(it => it.enlarged)
    if (main && main.scale >= 0.5) expect(joints).toEqual([])
    else expect(joints).toHaveLength(2)
    expect(new Set(joints.map(it => it.scale)).size).toBeLessThan(2)
  })

  it('list what either does not meet, once, with a number', () => {
    const bold = wordsOn(drawing).filter(it => it.bold && it.layer === 'words')
    const numbers = bold.map(it => it.words).filter(it => /^\d+$/.test(it))
    const all = [...new Set([...notMet(pair[0]), ...notMet(pair[1])])]
    const named = all.filter(title => bold.some(it => it.words !== '' && title.startsWith(it.words)))
    expect(named).toEqual(all)
    expect(numbers).toEqual(Array.from({ length: notMet(pair[1]).length }, (_, at) => `${at + 1}`))
  })

  it('have leaders in the wrong one to numbers of the list alone', () => {
    const [, view] = viewsOn(drawing).filter(it => !it.enlarged)
    const led = view ? flatten(view).flatMap(it => (it.kind === 'leader' ? [it.number] : [])) : []
    const listed = notMet(pair[1]).map((_, at) => `${at + 1}`)
    expect(led.length).toBeGreaterThan(0)
    expect(led.filter(it => !listed.includes(it))).toEqual([])
    expect(new Set(led).size).toBe(led.length)
  })
})

describe('a comparison', () => {
  const right = aDetail('right-jamb')

  it('of a detail with itself has no fault to list', () => {
    const said = besideSheet([right, right], { language: 'en', palette: 'black' })
    const words = wordsOn(said).map(it => it.words)
    expect(words.filter(it => it === 'no fault')).toHaveLength(2)
    expect(words.some(it => it.startsWith('none: both details'))).toBe(true)
  })

  it('holds forces against forces and lengths against lengths', () => {
    const drawing = besideSheet([aDetail('facing-leaf'), aDetail('unheld-head')], { language: 'en', palette: 'black' }) // prettier-ignore
    const units = [...drawing.says.matchAll(/ A ([^;]*(?:; [^B][^;]*)*); B ([^.]*)/g)].map(
      ([, a = '', b = '']) => [a, b].map(said => (/actual: [^·]*?\u00a0(mm|N|%)/.exec(said) ?? [])[1]),
    )
    expect(units.length).toBeGreaterThan(5)
    expect(units.filter(([a, b]) => a !== undefined && b !== undefined && a !== b)).toEqual([])
  })

  it('names the right and the wrong one whichever stands first', () => {
    const wrong = aDetail('foam-only')
    const counts = (a: Beside, b: Beside) =>
      wordsOn(besideSheet([a, b], { language: 'en', palette: 'black' }))
        .map(it => it.words)
        .filter(it => /^(no fault|\d+ faults?)$/.test(it))
    expect(counts(right, wrong)).toEqual(['no fault', `${notMet(wrong).length} faults`])
    expect(counts(wrong, right)).toEqual([`${notMet(wrong).length} faults`, 'no fault'])
  })

  it('with names that are longer than the title block has them over the details', () => {
    const named = aDetail('right-jamb', 'left', it => {
      const renamed = applyEdits(it, [{ kind: 'rename', part: right.place.opening, to: 'A'.repeat(80) }])
      if (!renamed.ok) throw new Error(renamed.problems[0].say.en)
      return renamed.value
    })
    const drawing = besideSheet([named, right], { language: 'de', palette: 'black' })
    expect(sheetProblems(named.project, drawing)).toEqual([])
    expect(wordsOn(drawing).some(it => /^A{20,} …$/.test(it.words))).toBe(true)
  })
})

it('names the part of the detail that has the fault, where two projects call different parts alike', () => {
  const pair = [aDetail('right-jamb', 'left'), aDetail('tight-outside', 'left')] as const
  const [right, wrong] = pair.map(it => it.project)
  const said = wordsOn(besideSheet(pair, { language: 'en', palette: 'black' })).map(it => it.words)
  expect(said[said.indexOf('Bead bonded to two flanks') + 1]).toBe('Sealant bead')
  // the seal that the fault is about has the name of another seal in the first project
  const kindsOf = (project: typeof right) => new Map(Object.values(project?.joints ?? {}).flatMap(it => it.seals.map(one => [one.id, one.kind] as const)))
  const bead = [...kindsOf(wrong)].find(([, kind]) => kind === 'sealant')?.[0] ?? ''
  expect(kindsOf(right).get(bead)).toBe('impregnated-tape')
}) // prettier-ignore
