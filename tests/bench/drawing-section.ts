import { drawSection, inkOfView, layOut } from '../../core/drawing'
import type { Point } from '../../core/geometry'
import { aSection } from '../given/a-section'
import { aSectionLook } from '../given/a-section-sheet'
import type { Bench } from './bench'

const section = aSection({ profile: 'pvc-76' })
const look = aSectionLook()
const bare = { ...look, show: { sizes: false, numbers: false } }
const sized = { ...look, show: { sizes: true, numbers: false } }
const { view, layout } = drawSection(section, look)
const { view: bareView } = drawSection(section, bare)

/** Thirty parts as squares in a field, numbered from one column. */
const sites = Array.from({ length: 30 }, (_, at) => {
  const [x, y] = [(at % 5) * 18, Math.floor(at / 5) * 30]
  const loop: Point[] = [
    [x, y],
    [x + 14, y],
    [x + 14, y + 24],
    [x, y + 24],
  ]
  return { id: `${at}`, shapes: [{ loops: [loop] }], places: [] }
})
const bodies = sites.flatMap(it => it.shapes)
const column = { side: 'right', x: 110, low: 0, high: 200, pitch_mm: 6.5 } as const

const palette = { palette: 'colour', language: 'en' } as const

const bench = (name: string, wanted_ms: number, run: () => unknown): Bench => ({
  name,
  wanted_ms,
  warmUp: 30,
  runs: 60,
  run,
})

/** What drawing a section costs, step by step. */
export const drawingSection: readonly Bench[] = [
  bench(`draw the bodies of a section of ${section.regions.length} regions`, 4, () =>
    drawSection(section, bare),
  ),
  bench('draw it with sizes', 6, () => drawSection(section, sized)),
  bench('draw it with numbers that keep their slots', 8, () =>
    drawSection(section, { ...look, kept: layout.slots }),
  ),
  bench('draw it with numbers laid out from nothing', 30, () => drawSection(section, look)),
  bench('ink the bodies of a section, hatches clipped', 4, () => inkOfView(bareView, palette)),
  bench('ink all of a section', 6, () => inkOfView(view, palette)),
  bench('lay out the labels of 30 items', 30, () => layOut(sites, { bodies, words: [] }, column)),
]
