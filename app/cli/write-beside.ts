import type { Project, ZonePlace } from '../../core/detail'
import { type Beside, besideScales, besideSheet, sheetProblems } from '../../core/drawing'
import { check } from '../../core/rules'
import { type Problem, type Result, ok, refused } from '../../core/units'
import { type Some, filled, isSome, words } from '../../core/words'
import { cutPlace } from './cut-place'
import type { Chosen } from './commands/command'
import { readProject } from './read-project'
import {
  cutOf,
  enlargedOf,
  hasEnlarged,
  scaleAmong,
  type SheetAsked,
  type Target,
  writeDrawings,
} from './write-sheet'

/** Whether a second detail is asked for: by its opening, its file, or both. */
export const isBeside = (chosen: Chosen): boolean =>
  chosen['beside'] !== undefined || chosen['besideFile'] !== undefined

/**
 * Draws a cut of two openings on one sheet at one scale, their faults numbered, and writes it. Refused where the second
 * opening cannot be read or is the first itself, where both do not fit, and for what is drawn of one cut alone.
 */
export const writeBeside = async (
  project: Project,
  place: ZonePlace,
  target: Target,
  { chosen, paper, shows, scale, enlarged, ...asked }: SheetAsked & { readonly chosen: Chosen },
): Promise<Result<string>> => {
  if (chosen['cut'] === 'all') return refused({ at: '--cut', say: oneCut })
  if (shows !== undefined && shows !== 'parts') return refused({ at: '--show', say: noField })
  if (paper === 'A4') return refused({ at: '--paper', say: onlyA3 })
  const other = await otherOf(project, place, chosen)
  if (!other.ok) return other
  const detail = (of: Project, at: ZonePlace): Beside => ({
    project: of,
    report: check(of),
    ...cutOf(of, at),
  })
  const pair = [detail(project, place), detail(other.value.project, other.value.place)] as const
  const scales = besideScales(pair, asked)
  if (!isSome(scales)) return refused({ at: '--beside', say: noRoom })
  const at = scaleAmong(scales, scale)
  if (!at.ok) return at
  const joint = enlarged === undefined ? {} : { enlarged: enlargedOf(enlarged) }
  const drawing = besideSheet(pair, { ...asked, ...at.value, ...joint, sheet: '1 / 1' })
  if (typeof joint.enlarged === 'number' && !hasEnlarged(drawing))
    return refused({ at: '--enlarged', say: filled(noEnlarged, enlarged ?? '') })
  const problems = sheetProblems(project, drawing)
  return isSome(problems) ? refused(...problems) : writeDrawings(project, [drawing], target)
}

/** The opening beside: of the same project, or the one that is named in another file, or the first there. */
const otherOf = async (
  project: Project,
  place: ZonePlace,
  { beside, besideFile, cut }: Chosen,
): Promise<Result<{ readonly project: Project; readonly place: ZonePlace }>> => {
  const opened = typeof besideFile === 'string' ? await readProject(besideFile) : undefined
  if (opened && !opened.ok) return inOption('--beside-file', opened.problems)
  const of = opened ? opened.value.project : project
  const found = cutPlace(of, { cut, ...(typeof beside === 'string' && { opening: beside }) })
  if (!found.ok) return inOption('--beside', found.problems)
  return of === project && found.value.opening === place.opening
    ? refused({ at: '--beside', say: filled(itself, place.opening) })
    : ok({ project: of, place: found.value })
}

/** Problems with what an option names, each at its own place in that. */
const inOption = (option: string, [first, ...more]: Some<Problem>): Result<never> => {
  const named = (it: Problem): Problem => ({ ...it, at: [option, it.at].filter(Boolean).join(': ') })
  return refused(named(first), ...more.map(named))
}

const itself = words(
  '“{0}” would stand beside itself: name another opening, or a file with --beside-file',
  '„{0}“ stünde neben sich selbst: eine andere Öffnung nennen, oder eine Datei mit --beside-file',
)
const oneCut = words(
  'details are compared at one side: all is not one',
  'Details werden an einer Seite verglichen: all ist keine',
)
const noField = words(
  'heat and vapour are drawn for one cut at a time',
  'Wärme und Dampf werden immer nur für einen Schnitt gezeichnet',
)
const onlyA3 = words('two details need an A3', 'zwei Details brauchen ein A3')
const noEnlarged = words(
  'the joints do not fit below these details at {0}, or would not be larger there',
  'die Fugen passen in {0} nicht unter diese Details oder wären dort nicht größer',
)
const noRoom = words(
  'these two details do not fit on one sheet at any scale',
  'diese beiden Details passen in keinem Maßstab auf ein Blatt',
)
