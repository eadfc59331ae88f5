import type { Project, ZonePlace } from '../../detail'
import type { Section } from '../../section'
import type { Drawing, Mark, View } from '../mark'
import { listedParts } from '../section/listed-parts'
import { standOf, zoneLook } from '../section/zone-view'
import { type Enlarged, enlarge, isEnlarged, jointLetter } from './enlarged'
import { checkRuler, sheetFrame } from './frame'
import { blockMarks, heading, headingOf, titleOfCut } from './headings'
import { keyElevation } from './key-elevation'
import {
  arrangedFirst,
  fitsAt,
  isUpright,
  type ListedPlan,
  listedPaper,
  listedPlan,
  revisionRows,
} from './listed-sheet'
import { pad_mm, titleBlock_mm } from './paper'
import { heading_mm } from './room'
import { materialsOf, saysOf, type SheetOptions, titleOf } from './sheet-options'

/** Scales of a single cut with its lists beside it, the largest first. */
const scales = [1, 0.5, 0.2, 0.1] as const

/** The scales at which a cut fits on a large sheet with its parts, revisions and notes beside it, the largest first. */
export const oneCutScales = (
  project: Project,
  place: ZonePlace,
  section: Section,
  options: Pick<SheetOptions, 'language' | 'unit' | 'report'>,
): readonly number[] => {
  const plan = planOf(project, place, section, options)
  return scales.filter(it => fitsAt(it, plan))
}

const planOf = (
  project: Project,
  place: ZonePlace,
  section: Section,
  options: Pick<SheetOptions, 'language' | 'unit' | 'report'>,
): ListedPlan => listedPlan(project, [{ place, section, letter: 'A' }], listedParts(project, place), options)

/**
 * One cut with its parts, revisions and notes beside it, at the largest scale between two that it fits at; nothing where
 * there is none.
 */
export const oneCutSheet = (
  project: Project,
  place: ZonePlace,
  section: Section,
  options: SheetOptions,
  [most, least]: readonly [number, number],
): Drawing | undefined => {
  const { language, unit = 'mm' } = options
  const plan = planOf(project, place, section, options)
  const on = arrangedFirst(
    scales.filter(it => it <= most && it >= least),
    plan,
  )
  if (on === undefined) return undefined
  const { scale } = on
  const paper = listedPaper
  const [[x0], [, y1]] = paper.frame
  const drawn = on.placed.cuts.map(it => it.block.draw(it.at))
  const key = on.keyAt
    ? keyElevation(
        project,
        place.opening,
        [{ letter: 'A', upright: isUpright({ place }) }],
        on.keyAt,
        language,
      )
    : []
  const joint = jointBeside(project, place, section, { drawn, key, plan, right: on.right }, options)
  const title = headingOf(project, place)[language]
  const head = { paper, scale, headingAt: [x0 + pad_mm + 1, y1 - 8] as const, right: on.right }
  return {
    size_mm: paper.size_mm,
    language,
    palette: options.palette,
    title: titleOf(project, place, language),
    says: saysOf(title, plan.parts, language, joint),
    materials: materialsOf(project, section),
    marks: [
      ...drawn.map(({ view }) => (joint ? { ...view, marks: [...view.marks, ...joint.ring] } : view)),
      ...(joint ? [joint.view, ...joint.heading] : []),
      ...sheetFrame(paper),
      ...checkRuler(paper, { language, unit }),
      ...heading(project, place, head, { language, unit }),
      ...drawn.flatMap(it => it.marks),
      ...key,
      ...on.lists.marks,
      ...blockMarks(project, titleOfCut(project, place, { scale, paper }, options), paper, {
        language,
        rows: revisionRows,
      }),
    ],
  }
}

/** The joint drawn once more in what is free beside a cut and its lists, where it is wanted. */
const jointBeside = (
  project: Project,
  place: ZonePlace,
  section: Section,
  on: {
    readonly drawn: readonly { readonly view: View; readonly marks: readonly Mark[] }[]
    readonly key: readonly Mark[]
    readonly plan: ListedPlan
    readonly right: number
  },
  { language, unit = 'mm', enlarged }: SheetOptions,
): Enlarged | undefined => {
  const [main] = on.drawn
  if (main === undefined || !isEnlarged(enlarged, main.view.scale)) return undefined
  const [[x0, y0], [x1, y1]] = listedPaper.frame
  return enlarge(
    {
      section,
      look: { ...zoneLook(project, place, language, unit), ...standOf[place.side], parts: on.plan.parts },
      letter: jointLetter,
    },
    main.view,
    {
      room: [[x0, y0], [on.right, y1 - heading_mm]],
      marks: [main.view, ...main.marks, ...on.key],
      kept: [[[x1 - titleBlock_mm[0], y0], [x1, y0 + on.plan.block_mm]]],
    },
    enlarged,
  )
} // prettier-ignore
