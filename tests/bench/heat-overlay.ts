import { applyEdit, jointOf, type Project, samples, zonesOf } from '../../core/detail'
import {
  fieldMarks,
  type HeatQuestion,
  heatQuestion,
  inkOfMarks,
  pictureOf,
  profileMarks,
  scaleMarks,
  standInWindow,
  viewOf,
} from '../../core/drawing'
import { type Moving, moveTo, sectionCase, startMoving } from '../../core/heat'
import { cutSection } from '../../core/section'
import { specified } from '../../core/units'
import type { Bench } from './bench'

/** What the worker of the window does of a frame: the jamb with the largest mesh, its frame moved in and out. */
const project = samples.find(it => it.file === 'unheld-head')?.project

const questionAt = (now: Project): HeatQuestion => {
  const place = zonesOf(now).find(it => it.side === 'left')
  if (!place) throw new Error('an opening has a left side')
  const width_mm = jointOf(now, place.zone).planned_mm.value
  return heatQuestion(now, place, cutSection(now, place, { state: 'planned', width_mm }))
}

const moved = (by_mm: number): HeatQuestion => {
  if (!project) throw new Error('the sample is missing')
  const [opening] = Object.values(project.openings)
  if (!opening) throw new Error('a project has an opening')
  const to = specified(opening.position_mm.value + by_mm)
  const edited = applyEdit(project, {
    kind: 'state',
    at: { field: 'opening.position', part: opening.id },
    to,
  })
  return questionAt(edited.ok ? edited.value : project)
}

/** The board at 1280 × 720: 700 × 415 pixels at 1 : 2.3, and as much again round it. */
const view = { window: [[-140, -260], [210, 260]] as const, scale: 0.43, at: [0, 0] as const, ...standInWindow } // prettier-ignore
const look = { ...view, language: 'en' as const, seen: [[-74, -190], [146, 190]] as const } // prettier-ignore
const strip = { scale: { at: [0, 0] as const, size: [60, 35] as const }, profile: { at: [0, 0] as const, size: [110, 35] as const } } // prettier-ignore

const questions = Array.from({ length: 63 }, (_, i) => moved(12 * Math.sin(i / 10)))
let moving: Moving | undefined
let frame = 0

const overlay = (): unknown => {
  const question = questions[frame++ % questions.length]
  const turned = question && sectionCase(question.section, viewOf(question))
  if (!question || !turned?.ok) throw new Error('the section cannot be turned into a case')
  const next = moving ? moveTo(moving, turned.value.case) : startMoving(turned.value.case)
  if (!next.ok) throw new Error(JSON.stringify(next.problems))
  moving = 'moving' in next.value ? next.value.moving : next.value
  const picture = pictureOf(question, turned.value, moving.solution)
  const { bands, lines } = fieldMarks(picture, look)
  const colours = { palette: 'colour', language: 'en' } as const
  return [
    inkOfMarks([{ kind: 'view', layer: 'fabric', ...view, marks: [...bands, ...lines] }], colours),
    inkOfMarks(scaleMarks(picture, strip.scale, 'en'), colours),
    inkOfMarks(profileMarks(picture, strip.profile, 'en'), colours),
  ]
}

export const heatOverlay: readonly Bench[] = [
  {
    name: 'heat shown while the frame moves, one answer with its lines and numbers',
    wanted_ms: 8,
    warmUp: 120,
    runs: 600,
    run: overlay,
  },
]
