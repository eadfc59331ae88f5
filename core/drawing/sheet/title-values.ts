import { issueStanding, lastRevision, type Project, type Revision } from '../../detail'
import type { Problem } from '../../units'
import { filled, type Language, type Words, words } from '../../words'
import type { Drawing } from '../mark'
import { heights, textWidth_mm } from '../text/lettering'
import { revisionRoom_mm } from './revision-table'
import { mandatoryFields, overlongIn, titleCaption, type TitleField } from './title-block'

/** The values of a title block by field; what is missing is printed as a line to write on. */
export type TitleValues = { readonly [F in TitleField]?: string }

/** What a sheet gives to its title block. */
export type OfSheet = {
  readonly subtitle: Words
  readonly type: Words
  readonly scale: string
  readonly size: string
  readonly sheet?: string
  readonly language: Language
  /** what takes the place of the values of the project */
  readonly title?: TitleValues
}

const standingWords = {
  draft: words('Draft, not for construction', 'Entwurf, nicht zur Ausführung'),
  'for-comment': words('For comment', 'Zur Stellungnahme'),
  issued: words('Issued', 'Ausgegeben'),
  superseded: words('Superseded, do not use', 'Überholt, nicht verwenden'),
} as const

/** The title block with what the project knows. Where a field that must be filled is empty, the sheet is a draft. */
export const titleValuesOf = (project: Project, of: OfSheet): TitleValues => {
  const { title } = project
  const { language } = of
  const last = lastRevision(project)
  const values: TitleValues = {
    owner: title.office,
    title: title.note,
    subtitle: of.subtitle[language],
    creator: title.author,
    approver: title.approver ?? '',
    date: last?.date ?? '',
    revision: last?.index ?? '',
    type: of.type[language],
    project: [title.name, title.place].filter(it => it !== '').join(', '),
    number: title.number,
    language,
    scale: of.scale,
    size: of.size,
    sheet: of.sheet ?? '',
    ...of.title,
  }
  return { status: standingWords[standingOf(project, values)][language], ...values }
}

/** Fields that no issued sheet may leave empty, and that are. */
export const unfilledIn = (values: TitleValues): readonly TitleField[] =>
  mandatoryFields.filter(it => (values[it] ?? '') === '')

/** How a sheet with these values stands. What is superseded says so even where fields are empty. */
export const standingOf = (project: Project, values: TitleValues): ReturnType<typeof issueStanding> => {
  const standing = issueStanding(project)
  if (standing === 'superseded') return standing
  return unfilledIn(values).length > 0 ? 'draft' : standing
}

/** Said beside the heading of a sheet that no longer holds. */
export const supersededWords = (project: Project): Words | undefined => {
  const last = lastRevision(project)
  return issueStanding(project) === 'superseded' && last
    ? filled(
        words('superseded: changed since revision {0}', 'überholt: geändert seit Änderung {0}'),
        last.index,
      )
    : undefined
}

/**
 * What does not fit into its field on a sheet: a file with such a text is refused, with the name of the field, how long
 * the text is and how much fits.
 */
export const sheetProblems = (project: Project, drawing: Drawing): readonly Problem[] => [
  ...overlongIn(titleOn(drawing)).map(({ field, letters, room }): Problem => ({
    at: `title.${field}`,
    say: filled(tooLong, titleCaption(field), letters, room),
  })),
  ...(project.title.revisions ?? []).flatMap(revisionProblems),
]

/** The title block that a sheet has. */
export const titleOn = ({ marks }: Drawing): Readonly<Record<string, string>> =>
  marks.flatMap(it => (it.kind === 'symbol' && it.name === 'title-block' ? [it.values] : []))[0] ?? {}

const revisionProblems = (revision: Revision, at: number): readonly Problem[] =>
  (['index', 'note'] as const).flatMap((column): Problem[] => {
    const width = textWidth_mm(revision[column], heights.note_mm, column === 'index')
    const room_mm = revisionRoom_mm[column]
    if (width <= room_mm) return []
    const letters = [...revision[column]].length
    const room = Math.floor((letters * room_mm) / width)
    return [
      {
        at: `title.revisions.${at}.${column}`,
        say: filled(tooLong, filled(revisionWord, revision.index), letters, room),
      },
    ]
  })

const revisionWord = words('Revision {0}', 'Änderung {0}')

const tooLong = words(
  '{0}: the text has {1} letters, about {2} fit its field',
  '{0}: der Text hat {1} Zeichen, etwa {2} passen in sein Feld',
)
