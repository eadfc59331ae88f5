import { frameOf, materialOf, openingOf, type Project, profileOf } from '../../../core/detail'
import { type Drawing, drawSection, standInWindow, zoneLook } from '../../../core/drawing'
import { svgOf } from '../../../core/export'
import { sectionCase, undisturbedWall, usualClimate } from '../../../core/heat'
import { jointBand } from '../../../core/movement'
import { cutSection } from '../../../core/section'
import type { Language } from '../../../core/words'
import { firstView, placeOf } from '../../editor'

/** How much of a joint a small picture shows, in mm: along the wall, and through it. */
const shown_mm = { wall: 62, opening: 128, before: 48, behind: 166 } as const

/** Paper mm per mm: 1 to 5, which small hatches still bear. */
const scale = 0.2

/** The cut that says most of a project. */
const cutOf = (project: Project) => {
  const place = placeOf(project, firstView(project))
  const { planned_mm } = jointBand(project, place.opening, place.side, place.zone.id)
  return { place, section: cutSection(project, place, { state: 'planned', width_mm: planned_mm }) }
}

/** The joint of a project in small, as an SVG text: the cut round the frame, without sizes and numbers, on white. */
export const pictureOf = (project: Project, language: Language): string => {
  const { place, section } = cutOf(project)
  const from = openingOf(project, place.opening).position_mm.value
  const { depth_mm } = profileOf(frameOf(project, place.opening))
  const middle = from + depth_mm / 2
  const half = (shown_mm.before + shown_mm.behind) / 2
  const { view } = drawSection(section, {
    ...zoneLook(project, place, language),
    window: [
      [-shown_mm.wall, middle - half],
      [shown_mm.opening, middle + half],
    ],
    scale,
    at: [0, 0],
    ...standInWindow,
    show: { sizes: false, numbers: false },
  })
  const drawing: Drawing = {
    size_mm: [2 * half * scale, (shown_mm.wall + shown_mm.opening) * scale],
    language,
    title: project.title.number,
    says: project.title.note,
    palette: 'colour',
    materials: new Map(),
    marks: [view],
  }
  return svgOf(drawing, undefined, 'bare')
}

/** U of the undisturbed wall of a project, by the same sum as the heat of its joint; nothing where a material is unknown. */
export const wallU_W_m2K = (project: Project): number | undefined => {
  const turned = sectionCase(cutOf(project).section, {
    climate: usualClimate,
    purpose: 'heat-loss',
    materialOf: (id, part) => materialOf(project, id, part),
  })
  return turned.ok ? undisturbedWall(turned.value).u_W_m2K : undefined
}
