import '../no-eval'
import {
  fieldMarks,
  inkOfMarks,
  pictureOf,
  profileMarks,
  scaleMarks,
  type ViewMark,
  viewOf,
} from '../../../core/drawing'
import { heatDesk, type HeatAnswer, type SectionCase, sectionCase } from '../../../core/heat'
import type { HeatAsked, HeatTold } from './messages'
import { packed, type PackedInk } from './packed-ink'

/** Solves the field of whatever is asked last, the nodes of its mesh following what moves, and makes ink of it. */

/** What was asked and turned into a case, until its answer is there. */
let asked: { readonly it: HeatAsked; readonly turned: SectionCase; readonly from_ms: number } | undefined

const tell = (told: HeatTold): void => {
  const handed =
    told.kind === 'picture'
      ? [told.bands, told.lines, told.scale, told.profile].map(it => it.places.buffer)
      : []
  postMessage(told, { transfer: handed })
}

/** Faults of ours are told, so that the panel of heat alone says so. */
const guarded = (number: number, work: () => void): void => {
  try {
    work()
  } catch (error) {
    tell({
      number,
      kind: 'fault',
      report: error instanceof Error ? `${error.message}\n${error.stack ?? ''}` : String(error),
    })
  }
}

const answer = (found: HeatAnswer): void => {
  const now = asked
  if (!now || now.it.number !== found.revision) return
  const { it, turned, from_ms } = now
  const { number, question, look } = it
  if (!found.ok) {
    tell({ number, kind: 'problems', problems: found.problems })
    return
  }
  const whole = pictureOf(question, turned, found.solution)
  const picture = look.named ? whole : { ...whole, named: [] }
  const { solution: _, profile: __, ...facts } = whole
  const { bands, lines } = fieldMarks(picture, { ...look.view, seen: look.seen, language: look.language })
  const view = { kind: 'view', layer: 'fabric', ...look.view } as const
  const ink = (marks: readonly ViewMark[]): PackedInk =>
    packed(inkOfMarks([{ ...view, marks }], { palette: 'colour', language: look.language }))
  const paper = (marks: readonly ViewMark[]): PackedInk =>
    packed(inkOfMarks(marks, { palette: 'colour', language: look.language }))
  tell({
    number,
    kind: 'picture',
    how: found.how,
    look,
    facts,
    bands: ink(bands),
    lines: ink(lines),
    scale: paper(scaleMarks(picture, look.strip.scale, look.language)),
    profile: paper(profileMarks(picture, look.strip.profile, look.language)),
    spent_ms: performance.now() - from_ms,
  })
}

// Messages that have arrived already are read before the work begins: what was overtaken is never solved.
const soon = new MessageChannel()
let waiting: (() => void) | undefined
soon.port1.onmessage = () => {
  const work = waiting
  waiting = undefined
  if (work) guarded(asked?.it.number ?? 0, work)
}
const desk = heatDesk({
  later: work => {
    waiting = work
    soon.port2.postMessage(undefined)
  },
  answer,
})

/** The last question that came; turning it into a case is left until it is known that none follows. */
let last: HeatAsked | undefined
const turning = new MessageChannel()
turning.port1.onmessage = () => {
  const it = last
  last = undefined
  if (!it) return
  guarded(it.number, () => {
    const from_ms = performance.now()
    const turned = sectionCase(it.question.section, viewOf(it.question))
    if (!turned.ok) {
      tell({ number: it.number, kind: 'problems', problems: turned.problems })
      return
    }
    asked = { it, turned: turned.value, from_ms }
    desk.ask({ revision: it.number, case: turned.value.case })
  })
}
addEventListener('message', (event: MessageEvent<HeatAsked>) => {
  const isIdle = last === undefined
  last = event.data
  if (isIdle) turning.port2.postMessage(undefined)
})
