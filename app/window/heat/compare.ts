import type { Project, ZonePlace } from '../../../core/detail'
import {
  drawSection,
  fieldMarks,
  heatQuestion,
  type InkGroup,
  inkOfMarks,
  pictureOf,
  standInWindow,
  usualWindow,
  type ViewMark,
  zoneLook,
} from '../../../core/drawing'
import { type Table, variantsOf, variantsTable, verdictsOf } from '../../../core/study'
import { ok, type Result } from '../../../core/units'
import type { PhysicsOf } from '../../../core/vapour'
import type { Language } from '../../../core/words'
import { packed } from './packed-ink'
import type { Compared } from './study-messages'

/** Lines of small pictures are half as wide as on a sheet. Ours. */
const thin = (groups: readonly InkGroup[]): readonly InkGroup[] =>
  groups.map(group => ({
    ...group,
    inks: group.inks.map(it => (it.kind === 'stroke' ? { ...it, width_mm: it.width_mm / 2 } : it)),
  }))

/** So much of its size a picture fills: signs at its edge stand out a little. Ours. */
const shareOfSize = 0.95

/** Up to four places of the frame: pictures at one scale and in one window, and the table of what follows from each. */
export const comparedPlaces = (
  project: Project,
  place: ZonePlace,
  look: {
    readonly language: Language
    readonly size: readonly [number, number]
    readonly physics: PhysicsOf
  },
): Result<{ readonly places: readonly Compared[]; readonly table: Table }> => {
  const { language, size, physics } = look
  const all = variantsOf(project, place)
  if (!all.ok) return all
  const windows = all.value.map(it => usualWindow(it.project, place, it.case.section))
  const low = [0, 1].map(axis => Math.min(...windows.map(it => it[0][axis as 0 | 1])))
  const high = [0, 1].map(axis => Math.max(...windows.map(it => it[1][axis as 0 | 1])))
  const window = [
    [low[0] ?? 0, low[1] ?? 0],
    [high[0] ?? 0, high[1] ?? 0],
  ] as const
  // Outside lies at the left: the depth of the wall runs across, the joint down.
  const scale =
    shareOfSize * Math.min(size[0] / (window[1][1] - window[0][1]), size[1] / (window[1][0] - window[0][0]))
  const view = { window, scale, at: [0, 0] as const, ...standInWindow, mirrored: place.side === 'sill' }
  const ink = (marks: readonly ViewMark[]) =>
    packed(
      thin(inkOfMarks([{ kind: 'view', layer: 'fabric', ...view, marks }], { palette: 'colour', language })),
    )
  const places = all.value.map((it): Compared => {
    const question = heatQuestion(it.project, place, it.case.section, 'heat-loss')
    const picture = pictureOf(question, it.case.turned, it.solution, it.psi)
    const { solution: _, profile: __, coldest: ___, ...facts } = picture
    // The coldest place is judged with the films for surface humidity: its ring stands where it is colder still.
    const { bands, lines } = fieldMarks(
      { ...picture, ...(it.coldest ? { coldest: it.coldest } : {}) },
      { ...view, language, numbers: 'none' },
    )
    const { view: drawn } = drawSection(it.case.section, {
      ...zoneLook(it.project, place, language),
      ...view,
      show: { sizes: false, numbers: false },
    })
    return {
      position_mm: it.position_mm,
      isPresent: it.isPresent,
      view,
      facts: { ...facts, ...(it.coldest ? { coldest: it.coldest } : {}) },
      bands: ink(bands),
      outlines: ink(
        drawn.marks.filter(mark => mark.kind !== 'area' && !(mark.kind === 'path' && mark.pen === 'break')),
      ),
      lines: ink(lines),
    }
  })
  const table = variantsTable(
    all.value.map(variant => ({ variant, report: verdictsOf(variant, place, physics) })),
  )
  return ok({ places, table })
}
