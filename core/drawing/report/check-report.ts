import {
  issueStanding,
  lastRevision,
  openingOf,
  type Project,
  zonesOf,
  type ZonePlace,
  sideNameAt,
} from '../../detail'
import { practiceOf } from '../../practice'
import { sides } from '../../kinds'
import {
  type Finding,
  findingRows,
  labels,
  type NotApplicable,
  type Report,
  verdicts,
  type Where,
} from '../../rules'
import type { ZoneStudy } from '../../study'
import { filled, isSome, type Language, listed, same, type Some, type Words, words } from '../../words'
import type { Drawing, Mark, Palette } from '../mark'
import { cautions, cautionsHeading } from '../sheet/notes'
import { stands } from '../sheet/open-items'
import { a4 } from '../sheet/paper'
import { heights } from '../text/lettering'
import { line, text } from '../sheet/marks'
import { heatPieces } from './heat-pieces'
import { inputsOf } from './inputs'
import { paginate, type Piece } from './pages'
import { photoPieces } from './photo-pieces'
import { headingPiece, rowPiece, statusPiece } from './pieces'

const [[left, low], [right, top]] = a4.frame
const head_mm = 10
const foot_mm = 9

const title = words('Check report', 'Prüfbericht')

/** The check of a project as A4 pages: inputs with their basis, every finding, what does not apply, cautions. */
export const checkReport = (
  project: Project,
  report: Report,
  {
    language,
    palette,
    studies = [],
  }: {
    readonly language: Language
    readonly palette: Palette
    /** heat and vapour of zones, where they were solved */
    readonly studies?: readonly ZoneStudy[]
  },
): Some<Drawing> => {
  const pieces = [
    ...summary(project, report, language),
    ...inputPieces(project, language),
    ...findingPieces(project, report, language),
    ...silentPieces(project, report, language),
    ...heatPieces(project, studies, language),
    ...photoPieces(project, language),
    headingPiece(cautionsHeading[language], 1),
    ...cautions.map(it => rowPiece({ label: '–', text: it[language], labelWidth_mm: 5 })),
  ]
  const pages = paginate(pieces, { x: left, top: top - head_mm, low: low + foot_mm })
  const name = filled(same('{0} {1}'), title, project.title.number)[language].trim()
  const drawings = pages.map((marks, at): Drawing => ({
    size_mm: a4.size_mm,
    language,
    palette,
    title: pages.length === 1 ? name : `${name}, ${at + 1} / ${pages.length}`,
    says: `${name}. ${countsOf(report, language)}.`,
    materials: new Map(),
    marks: [...pageMarks(project, language, at + 1, pages.length), ...marks],
  }))
  if (!isSome(drawings)) throw new Error('a report has at least one page')
  return drawings
}

/** "not met 2 · met 24", verdicts that do not occur left out. */
const countsOf = ({ findings, notApplicable }: Report, language: Language): string =>
  [
    ...verdicts.map(
      it => [findings.filter(one => one.verdict === it).length, labels.verdictName[it].word] as const,
    ),
    [notApplicable.length, labels.notApplicable] as const,
  ]
    .filter(([count]) => count > 0)
    .map(([count, word]) => `${word[language]} ${count}`)
    .join(' · ')

const standingWords = {
  draft: words('draft', 'Entwurf'),
  'for-comment': words('for comment', 'zur Stellungnahme'),
  issued: words('issued', 'ausgegeben'),
  superseded: words('superseded', 'überholt'),
} as const

/** What stands on every page: what the report is about, and which page it is. */
const pageMarks = (project: Project, language: Language, page: number, of: number): readonly Mark[] => {
  const { number, name, office } = project.title
  const last = lastRevision(project)
  const state = [
    ...(last ? [`${labels.revision[language]} ${last.index}, ${last.date}`] : []),
    standingWords[issueStanding(project)][language],
  ].join(' · ')
  return [
    text([number, name].filter(Boolean).join(' · '), [left, top - 3], {
      height_mm: heights.subtitle_mm,
      bold: true,
    }),
    text(office, [right, top - 3], { anchor: 'end', faint: true }),
    line('block', [left, top - 6], [right, top - 6]),
    line('field', [left, low + 5], [right, low + 5]),
    text(`${title[language]} · ${state}`, [left, low + 1], { faint: true }),
    text(`${page} / ${of}`, [right, low + 1], { anchor: 'end' }),
  ]
}

const summary = (project: Project, report: Report, language: Language): readonly Piece[] => {
  const practice = practiceOf(project.practice)
  return [
    {
      height_mm: 8,
      draw: ([x, y]) => [
        text(title[language], [x, y - 5], {
          height_mm: heights.title_mm,
          bold: true,
          read: { as: 'H1', row: y, column: 0 },
        }),
      ],
    },
    rowPiece({
      label: labels.practiceWord[language],
      text: `${practice.name[language]}, ${labels.edition[language]} ${practice.edition}`,
    }),
    rowPiece({ label: resultWord[language], text: countsOf(report, language) }),
  ]
}

const resultWord = words('Result', 'Ergebnis')

const inputPieces = (project: Project, language: Language): readonly Piece[] => [
  headingPiece(words('Inputs and their basis', 'Eingaben und ihre Grundlage')[language], 2),
  ...inputsOf(project).flatMap(({ part, values }) => [
    rowPiece({ label: part[language], text: '', bold: true, keeps: 1, above_mm: 1.2 }),
    ...values.map(it =>
      rowPiece({
        label: it.name[language],
        labelWidth_mm: 76,
        numberWidth_mm: 66,
        number: it.value[language],
        text: it.basis[language],
        dashed: it.assumed,
      }),
    ),
  ]),
]

/** Findings that say the very same at several sides of an opening are said once, with all their sides. */
const findingPieces = (project: Project, report: Report, language: Language): readonly Piece[] =>
  Object.keys(project.openings).flatMap(opening => {
    const own = report.findings.filter(it => it.where.opening === opening)
    const alike = groupedBy(own, it => JSON.stringify([it.verdict, it.title.en, findingRows(it)]))
    return [
      headingPiece(`${openingOf(project, opening).name}: ${words('findings', 'Befunde')[language]}`, 2),
      ...alike.flatMap(group => onePiece(project, group, language)),
    ]
  })

const groupedBy = <T>(all: readonly T[], key: (it: T) => string): readonly Some<T>[] => {
  const groups = new Map<string, Some<T>>()
  for (const it of all) {
    const known = groups.get(key(it))
    groups.set(key(it), known ? [...known, it] : [it])
  }
  return [...groups.values()]
}

const onePiece = (project: Project, group: Some<Finding>, language: Language): readonly Piece[] => {
  const [first] = group
  const rows = findingRows(first)
  return [
    statusPiece({
      status: first.verdict,
      word: labels.verdictName[first.verdict].word[language],
      title: first.title[language],
      where: sidesOf(
        project,
        group.map(it => it.where),
      )[language],
      keeps: rows.length,
    }),
    ...rows.map(it =>
      rowPiece({
        label: it.label[language],
        labelWidth_mm: 30,
        indent_mm: 8,
        ...(it.term && { number: `${it.term.sign} ${it.term.number[language]}`.trim() }),
        text: it.text[language],
      }),
    ),
  ]
}

/** The sides that findings stand at; all round where there are four, nothing for those of the whole opening. */
const sidesOf = (project: Project, all: readonly Where[]): Words => {
  const places = zonesOf(project)
  if (all.every(it => it.side === undefined && it.corner === undefined)) return same('')
  const at = sides.filter(side =>
    all.some(where => places.some((it: ZonePlace) => it.side === side && stands(where, it))),
  )
  return at.length === sides.length
    ? words('all round', 'umlaufend')
    : listed(at.map(it => sideNameAt(project, all[0]?.opening ?? '', it)))
}

const silentPieces = (project: Project, report: Report, language: Language): readonly Piece[] => {
  const alike = groupedBy(report.notApplicable, (it: NotApplicable) => `${it.title.en}|${it.because.en}`)
  if (alike.length === 0) return []
  return [
    headingPiece(words('Does not apply', 'Entfällt')[language], 1),
    ...alike.map(group => {
      const at = sidesOf(
        project,
        group.map(it => it.where),
      )[language]
      const because = group[0].because[language]
      return rowPiece({
        label: group[0].title[language],
        labelWidth_mm: 70,
        text: at === '' ? because : `${because} (${at})`,
      })
    }),
  ]
}
