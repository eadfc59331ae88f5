import { type Side, sideName, sides } from '../../kinds'
import type { Stated } from '../../units'
import { filled, type Words, words } from '../../words'
import type { Field } from '../field'
import type { Id } from '../../geometry'
import { entryAt, wallOf } from '../find'
import type { Project } from '../model'
import { diagonals, heightPlaces, type Survey, widthPlaces } from '../survey'
import { numberField } from './number-field'
import { withOpening } from './tables'

/** No opening is measured smaller or larger than this: ours. */
const size = { unit: 'mm', min: 100, max: 12500 } as const

/** One measured size: where it is taken, and where the survey keeps it. */
type Taken = {
  readonly id: string
  readonly name: Words
  readonly of: (survey: Survey) => Stated<number> | undefined
  readonly with: (survey: Survey, to: Stated<number> | undefined) => Survey
}

const placeName: Readonly<Record<string, Words>> = {
  top: words('at the top', 'oben'),
  middle: words('in the middle', 'in der Mitte'),
  bottom: words('at the bottom', 'unten'),
  left: words('at the left', 'links'),
  centre: words('in the middle', 'in der Mitte'),
  right: words('at the right', 'rechts'),
  rising: words('rising to the right', 'steigend'),
  falling: words('falling to the right', 'fallend'),
}

/** A group of measured sizes with one of them changed, or taken out. */
const changed = <T extends Readonly<Record<string, Stated<number> | undefined>>>(
  group: T | undefined,
  key: string,
  to: Stated<number> | undefined,
): T => {
  const entries: Readonly<Record<string, Stated<number> | undefined>> = group ?? {}
  const { [key]: _, ...rest } = entries
  // The keys of a group are fixed; one of them comes or goes.
  return (to === undefined ? rest : { ...rest, [key]: to }) as unknown as T
}

const widths = widthPlaces.map((key): Taken => ({
  id: `survey.width-${key}`,
  name: filled(words('Opening width {0}', 'Öffnungsbreite {0}'), placeName[key] ?? ''),
  of: survey => survey.widths_mm?.[key],
  with: (survey, to) => ({ ...survey, widths_mm: changed(survey.widths_mm, key, to) }),
}))
const heights = heightPlaces.map((key): Taken => ({
  id: `survey.height-${key}`,
  name: filled(words('Opening height {0}', 'Öffnungshöhe {0}'), placeName[key] ?? ''),
  of: survey => survey.heights_mm?.[key],
  with: (survey, to) => ({ ...survey, heights_mm: changed(survey.heights_mm, key, to) }),
}))
const across = diagonals.map((key): Taken => ({
  id: `survey.diagonal-${key}`,
  name: filled(words('Diagonal {0}', 'Diagonale {0}'), placeName[key] ?? ''),
  of: survey => survey.diagonals_mm?.[key],
  with: (survey, to) => ({ ...survey, diagonals_mm: changed(survey.diagonals_mm, key, to) }),
}))

const sizeFields = [...widths, ...heights, ...across].map(it =>
  numberField({
    id: it.id,
    name: it.name,
    of: 'opening',
    unit: 'mm',
    surveyed: true,
    read: (project, opening) => it.of(entryAt(project.openings, opening)?.survey ?? {}),
    allowed: () => ({ bounds: size, because: words('clear size of the opening', 'lichtes Maß der Öffnung') }),
    write: (project, opening, to) =>
      withOpening(project, opening, one => ({ ...one, survey: it.with(one.survey ?? {}, to) })),
  }),
)

const ends = [
  ['narrowest', words('narrowest', 'engste')],
  ['widest', words('widest', 'breiteste')],
] as const

/** What can be measured between two faces at each side, narrowest and widest, and where the survey keeps it. */
type GapGroup = {
  readonly key: 'joints_mm' | 'rebates_mm'
  readonly sides: readonly Side[]
  readonly has?: (project: Project, opening: Id) => boolean
  readonly id: string
  readonly name: Words
  readonly because: Words
}

const gapGroups: readonly GapGroup[] = [
  {
    key: 'joints_mm',
    sides,
    id: 'survey.joint',
    name: words('Joint measured, {0}, {1}', 'Fuge gemessen, {0}, {1}'),
    because: words('measured between flank and frame', 'zwischen Leibung und Rahmen gemessen'),
  },
  {
    key: 'rebates_mm',
    // the foot of an opening has no nib
    sides: ['head', 'left', 'right'],
    has: (project, opening) => wallOf(project, opening).reveal.form.endsWith('rebate'),
    id: 'survey.rebate',
    name: words('Gap at the nib measured, {0}, {1}', 'Fuge am Anschlag gemessen, {0}, {1}'),
    because: words('measured between nib and frame', 'zwischen Anschlag und Rahmen gemessen'),
  },
]

/** Joints that were measured on the frame as it stands. A joint of nothing or less is possible: it is a finding. */
const gapFields = gapGroups.flatMap(group =>
  group.sides.flatMap(side =>
    ends.map(([end, says]) =>
      numberField({
        id: `${group.id}-${side}-${end}`,
        name: filled(group.name, sideName[side], says),
        of: 'opening',
        unit: 'mm',
        surveyed: true,
        ...(group.has ? { has: group.has } : {}),
        read: (project, opening) => entryAt(project.openings, opening)?.survey?.[group.key]?.[side]?.[end],
        allowed: () => ({ bounds: { unit: 'mm', min: -100, max: 200 }, because: group.because }),
        write: (project, opening, to) =>
          withOpening(project, opening, one => ({
            ...one,
            survey: withGap(one.survey ?? {}, group.key, { side, end, to }),
          })),
      }),
    ),
  ),
)

/** A measured joint has both ends: stating one states the other alike where it was not measured. */
const withGap = (
  survey: Survey,
  key: GapGroup['key'],
  {
    side,
    end,
    to,
  }: {
    readonly side: (typeof sides)[number]
    readonly end: 'narrowest' | 'widest'
    readonly to: Stated<number> | undefined
  },
): Survey => {
  const { [side]: now, ...others } = survey[key] ?? {}
  if (to === undefined) return { ...survey, [key]: others }
  return { ...survey, [key]: { ...others, [side]: { narrowest: to, widest: to, ...now, [end]: to } } }
}

/** How far the frame stands off the middle of its opening. */
const placeFields = [
  numberField({
    id: 'opening.aside',
    name: words('Off centre, to the right', 'Außermittig, nach rechts'),
    of: 'opening',
    unit: 'mm',
    read: (project, opening) => entryAt(project.openings, opening)?.aside_mm,
    allowed: () => ({
      bounds: { unit: 'mm', min: -100, max: 100 },
      because: words('one joint grows by what the other loses', 'eine Fuge gewinnt, was die andere verliert'),
    }),
    write: (project, opening, to) =>
      withOpening(project, opening, ({ aside_mm: _, ...it }) => (to ? { ...it, aside_mm: to } : it)),
  }),
  numberField({
    id: 'opening.raised',
    name: words('Off centre, upwards', 'Außermittig, nach oben'),
    of: 'opening',
    unit: 'mm',
    read: (project, opening) => entryAt(project.openings, opening)?.raised_mm,
    allowed: () => ({
      bounds: { unit: 'mm', min: -100, max: 100 },
      because: words('one joint grows by what the other loses', 'eine Fuge gewinnt, was die andere verliert'),
    }),
    write: (project, opening, to) =>
      withOpening(project, opening, ({ raised_mm: _, ...it }) => (to ? { ...it, raised_mm: to } : it)),
  }),
]

export const surveyFields: readonly Field<number>[] = [...placeFields, ...sizeFields, ...gapFields]
