import { materialOf, openingOf, type Project, type ZonePlace } from '../../detail'
import type { Id } from '../../geometry'
import type { Report } from '../../rules'
import type { Section } from '../../section'
import { filled, type Language, words } from '../../words'
import type { HeatPicture } from '../heat/picture'
import type { Palette } from '../mark'
import type { ListedPart } from '../section/listed-part'
import type { LengthUnit } from '../sizes/lengths'
import { headingOf, scaleWords } from './headings'
import type { TitleField } from './title-block'

/** What a sheet says beyond the model: nothing of it is read from a clock or guessed. */
export type SheetOptions = {
  readonly language: Language
  readonly palette: Palette
  /** fields of the title block; what is left out and not in the project prints as a line to write on */
  readonly title?: { readonly [F in TitleField]?: string }
  /** number of the sheet, `2 / 4` */
  readonly sheet?: string
  /** what lengths are written in; absent: millimetres */
  readonly unit?: LengthUnit
  /** absent: the smallest sheet that everything fits on */
  readonly paper?: 'A4' | 'A3'
  /** verdicts of the project; absent: they are found */
  readonly report?: Report
  /** the temperature field of the cut, drawn into it, with its scale and its surface in the place of the legend */
  readonly heat?: HeatPicture
  /** paper mm per model mm, one of `sheetScales`; absent: the largest that fits on the smallest sheet */
  readonly scale?: number
  /**
   * at which scale the joint of a single cut is drawn once more; absent: one that has room, where the cut itself is small.
   * A cut without a scale of its own becomes smaller where that gives it room
   */
  readonly enlarged?: number | 'none'
}

/** What each part is mostly made of. */
export const materialsOf = (project: Project, section: Section): ReadonlyMap<Id, Id> => {
  const materials = new Map<Id, Id>()
  for (const { part, fill } of section.regions)
    if (fill.kind === 'material' && !materials.has(part) && materialOf(project, fill.material))
      materials.set(part, fill.material)
  return materials
}

/** What a sheet of a cut is called, in bookmarks and titles of files. */
export const titleOf = (project: Project, place: ZonePlace, language: Language): string =>
  `${headingOf(project, place)[language]}, ${openingOf(project, place.opening).name}`

/** What a sheet says to who cannot see it. */
export const saysOf = (
  title: string,
  parts: readonly ListedPart[],
  language: Language,
  joint?: { readonly scale: number },
): string =>
  `${title}. ${filled(words('Parts from outside to inside: {0}.', 'Bauteile von außen nach innen: {0}.'), parts.map(it => `${it.number} ${it.name[language]}`).join('; '))[language]}${joint ? ` ${filled(jointSays, scaleWords(joint.scale))[language]}` : ''}`

const jointSays = words('The joint once more, enlarged, at {0}.', 'Die Fuge noch einmal, vergrößert, in {0}.')
