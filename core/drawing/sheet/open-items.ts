import type { ZonePlace } from '../../detail'
import { type Side, sides } from '../../kinds'
import type { Report, Where } from '../../rules'
import { filled, isSome, listed, same, type Words, words } from '../../words'
import type { Notes } from './notes'

/** What must be settled before a sheet is issued, in the order of its weight. */
const openVerdicts = ['not-met', 'refer', 'unknown'] as const
type OpenVerdict = (typeof openVerdicts)[number]

/** A finding that is open, once for all the sides that it stands at. */
export type OpenItem = { readonly verdict: OpenVerdict; readonly title: Words; readonly at: readonly Side[] }

/** The open findings of some zones by title, those that are not met first. Findings of a whole opening count at all. */
export const openItems = (report: Report, places: readonly ZonePlace[]): readonly OpenItem[] =>
  openVerdicts.flatMap(verdict => {
    const open = report.findings.filter(it => it.verdict === verdict)
    const titles = [...new Map(open.map(it => [it.title.en, it.title])).values()]
    return titles.flatMap((title): OpenItem[] => {
      const here = open.filter(it => it.title.en === title.en)
      const at = sides.filter(side =>
        places.some(place => place.side === side && here.some(it => stands(it.where, place))),
      )
      return at.length === 0 ? [] : [{ verdict, title, at }]
    })
  })

/** Whether a finding is about a place, or about the opening or a corner that the place belongs to. */
export const stands = ({ opening, side, zone, corner }: Where, place: ZonePlace): boolean =>
  opening === place.opening &&
  (side === undefined || side === place.side) &&
  (zone === undefined || zone === place.zone.id) &&
  (corner === undefined || corner.includes(place.side))

const openHeading = words('Open before issue', 'Offen vor der Ausgabe')
const nothingOpen = words('nothing', 'nichts')
const openWords: Readonly<Record<OpenVerdict, Words>> = {
  'not-met': words('Not met: {0}', 'Nicht erfüllt: {0}'),
  refer: words('Proof by others: {0}', 'Nachweis durch andere: {0}'),
  unknown: words('Not known: {0}', 'Nicht bekannt: {0}'),
}

/** One note a verdict, with the titles of its findings: for a sheet of one cut, whose sides need no names. */
export const openByVerdict = (items: readonly OpenItem[], most: number): Notes => ({
  heading: openHeading,
  notes:
    items.length === 0 ? [nothingOpen] : openVerdicts.flatMap(verdict => verdictNote(items, verdict, most)),
})

const verdictNote = (items: readonly OpenItem[], verdict: OpenVerdict, most: number): readonly Words[] => {
  const titles = items.filter(it => it.verdict === verdict).map(it => it.title)
  const shown = titles.slice(0, most)
  if (!isSome(shown)) return []
  const more = titles.length - shown.length
  const all = more > 0 ? [...shown, filled(words('{0} more', '{0} weitere'), more)] : shown
  return [filled(openWords[verdict], joined(all))]
}

/** Titles have commas and «and» of their own, so a list of them has semicolons. */
const joined = (all: readonly Words[]): Words => ({
  en: all.map(it => it.en).join('; '),
  de: all.map(it => it.de).join('; '),
})

/** One note a finding with the sides that it stands at: for a sheet of several cuts. */
export const openBySide = (
  items: readonly OpenItem[],
  count: number,
  most: number,
  nameOf: (side: Side) => Words,
): Notes => {
  const notes = items.map(({ verdict, title, at }) =>
    filled(
      openWords[verdict],
      at.length === count ? title : filled(same('{0} ({1})'), title, listed(at.map(nameOf))),
    ),
  )
  const left = notes.length - most
  return {
    heading: openHeading,
    notes:
      notes.length === 0
        ? [nothingOpen]
        : left > 0
          ? [...notes.slice(0, most - 1), filled(moreWords, left + 1)]
          : notes,
  }
}

const moreWords = words('and {0} more, see the check report', 'und {0} weitere, siehe Prüfbericht')
