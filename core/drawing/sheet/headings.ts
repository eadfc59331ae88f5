import { openingOf, type Project, type ZonePlace } from '../../detail'
import { sideName } from '../../kinds'
import { filled, type Language, same, type Words, words } from '../../words'
import type { Mark } from '../mark'
import { heights } from '../text/lettering'
import type { Arrangement } from './room'
import { scaleBar, scaleBarLength_mm } from './frame'
import { text } from './marks'
import { titleBlock_mm } from './paper'
import type { TitleField } from './title-block'

const headings = {
  left: [words('Left jamb', 'Leibung links'), words('horizontal section', 'Horizontalschnitt')],
  right: [words('Right jamb', 'Leibung rechts'), words('horizontal section', 'Horizontalschnitt')],
  head: [words('Head', 'Sturz'), words('vertical section', 'Vertikalschnitt')],
  sill: [words('Sill', 'Brüstung'), words('vertical section', 'Vertikalschnitt')],
} as const

/** What a sheet shows, in words. */
export const headingOf = (place: ZonePlace): Words => filled(same('{0}, {1}'), ...headings[place.side])

const scaleWords = (scale: number): string => `1:${Math.round(1 / scale)}`

/** Title, subtitle and scale bar at the top of a sheet. */
export const heading = (
  project: Project,
  place: ZonePlace,
  on: Arrangement,
  language: Language,
): readonly Mark[] => {
  const [x, y] = on.headingAt
  const [name, cut] = headings[place.side]
  const sub = filled(
    words('{0}, {1} · scale {2} · sizes in mm', '{0}, {1} · Maßstab {2} · Maße in mm'),
    openingOf(project, place.opening).name,
    cut,
    scaleWords(on.scale),
  )
  const right = on.paper.frame[1][0] - 10 - scaleBarLength_mm(on.scale)
  return [
    text(name[language], [x, y], { height_mm: heights.title_mm, bold: true }),
    text(sub[language], [x, y - 6.2], { height_mm: heights.subtitle_mm, faint: true }),
    ...scaleBar([right, y], on.scale),
  ]
}

const draft = words('Draft, not for construction', 'Entwurf, nicht zur Ausführung')
const detailDrawing = words('Detail drawing', 'Detailzeichnung')

/** The title block with what the project knows; what is given for a field takes the place of it. */
export const titleBlockMark = (
  project: Project,
  place: ZonePlace,
  on: Arrangement,
  options: {
    readonly language: Language
    readonly sheet?: string
    readonly title?: { readonly [F in TitleField]?: string }
  },
): Mark => {
  const { title } = project
  const { language } = options
  const [right, low] = [on.paper.frame[1][0], on.paper.frame[0][1]]
  return {
    kind: 'symbol',
    layer: 'sheet',
    name: 'title-block',
    at: [right - titleBlock_mm[0], low],
    values: {
      owner: title.office,
      title: title.note,
      subtitle: `${openingOf(project, place.opening).name}, ${sideName[place.side][language]}`,
      creator: title.author,
      type: detailDrawing[language],
      status: draft[language],
      project: [title.name, title.place].filter(it => it !== '').join(', '),
      number: title.number,
      language,
      scale: scaleWords(on.scale),
      size: on.paper.name,
      sheet: options.sheet ?? '',
      ...options.title,
    },
  }
}
