import { heatQuestion } from '../../../core/drawing'
import type { Board } from '../state/board.svelte'
import type { Readings } from '../state/readings.svelte'
import type { HeatAsked, HeatLook, HeatTold } from './messages'
import type { Study } from './study.svelte'
import type { Settled } from './study-messages'

/** A picture of the heat of the cut that is looked at. */
export type HeatShown = Extract<HeatTold, { kind: 'picture' }>

/** The heat of the cut that is looked at: the last answer of the worker, and whether a newer one is on its way. */
export type Heat = {
  /** whether heat is to be seen, and whether its named lines are */
  isOn: boolean
  isNamed: boolean
  /** whether the zone where water gathers is drawn round */
  isWet: boolean
  /** whether the right column is that of heat, or that of fields and verdicts */
  hasColumn: boolean
  /** what lies over the section: places of the frame beside each other, or vapour */
  beside: 'positions' | 'vapour' | undefined
  readonly compared: Study['compared']
  readonly compare: Study['compare']
  /** room for scale and chart in the strip */
  strip: HeatLook['strip']
  readonly shown: HeatShown | undefined
  /** what takes longer, once nothing moves any more */
  readonly settled: Settled | undefined
  /** the model has gone on, and its answer is late: what is shown is that of a moment ago */
  readonly isUpdating: boolean
  readonly problems: Extract<HeatTold, { kind: 'problems' }>['problems']
  /** our own fault in words for a report; the drawing goes on without heat */
  readonly fault: string | undefined
  /** asks for the heat of what is there now; called where it is to be seen */
  readonly ask: (look: HeatLook) => void
  /** begins anew after a fault */
  readonly tryAgain: () => void
  readonly end: () => void
}

/** The strip before it was measured; where it has no room it is not shown. */
const usualStrip: HeatLook['strip'] = {
  scale: { at: [0, 0], size: [56, 30] },
  profile: { at: [0, 0], size: [110, 30] },
}

/** An answer that takes longer than this is said to be on its way. Ours: less is not seen as waiting. */
const late_ms = 150

export const newHeat = (board: Board, readings: Readings, study: Study): Heat => {
  let isOn = $state(false)
  let isNamed = $state(true)
  let isWet = $state(false)
  let hasColumn = $state(true)
  let beside: Heat['beside'] = $state()
  let strip: HeatLook['strip'] = $state.raw(usualStrip)
  let shown: HeatShown | undefined = $state.raw()
  let problems: Heat['problems'] = $state.raw([])
  let fault: string | undefined = $state.raw()
  let isLate = $state(false)
  let asked = 0
  let answered = 0
  let worker: Worker | undefined
  let settledFor: { project?: unknown; section?: unknown } = {}
  let clock: ReturnType<typeof setTimeout> | undefined

  const hear = (told: HeatTold): void => {
    answered = told.number
    if (told.number === asked) {
      clearTimeout(clock)
      clock = undefined
      isLate = false
    }
    if (told.kind === 'fault') {
      fault = told.report
      return
    }
    problems = told.kind === 'problems' ? told.problems : []
    shown = told.kind === 'picture' ? told : undefined
  }
  const begin = (): Worker => {
    const begun = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' })
    begun.addEventListener('message', (event: MessageEvent<HeatTold>) => hear(event.data))
    begun.addEventListener('error', event => {
      event.preventDefault()
      fault = event.message || 'the worker of heat did not start'
    })
    return begun
  }
  const end = (): void => {
    clearTimeout(clock)
    worker?.terminate()
    worker = undefined
    shown = undefined
    isLate = false
  }

  // What takes longer is asked once nothing moves.
  $effect(() => {
    const { place, section } = readings
    if (isOn && section && !board.now.gesture) study.settle(place)
  })

  return {
    get isOn() {
      return isOn
    },
    set isOn(to) {
      isOn = to
      if (to) hasColumn = true
      else end()
    },
    get isNamed() {
      return isNamed
    },
    set isNamed(to) {
      isNamed = to
    },
    get isWet() {
      return isWet
    },
    set isWet(to) {
      isWet = to
    },
    get hasColumn() {
      return hasColumn
    },
    set hasColumn(to) {
      hasColumn = to
    },
    get beside() {
      return isOn ? beside : undefined
    },
    set beside(to) {
      beside = to
    },
    get compared() {
      return study.compared
    },
    compare: study.compare,
    get strip() {
      return strip
    },
    set strip(to) {
      strip = to
    },
    get shown() {
      return shown
    },
    get settled() {
      return study.settled
    },
    get isUpdating() {
      return isLate
    },
    get problems() {
      return problems
    },
    get fault() {
      return fault
    },
    ask: look => {
      if (fault !== undefined) return
      worker ??= begin()
      const { project, place, section } = readings
      // Another look at the same cut leaves what was settled as it is.
      if (project !== settledFor.project || section !== settledFor.section) {
        settledFor = { project, section }
        study.unsettle()
      }
      const question: HeatAsked = {
        number: ++asked,
        question: heatQuestion(project, place, section),
        look,
      }
      worker.postMessage(question)
      clock ??= setTimeout(() => {
        clock = undefined
        isLate = answered !== asked
      }, late_ms)
    },
    tryAgain: () => {
      end()
      fault = undefined
    },
    end,
  }
}
