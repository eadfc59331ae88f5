import { type Project, type ZonePlace } from '../../../core/detail'
import type { Remedy, Report } from '../../../core/rules'
import type { Board } from '../state/board.svelte'
import type { Settled, StudyAsked, StudyTold } from './study-messages'

/** What is worked out beside the window: answers for rules, and what takes longer once nothing moves. */
export type Study = {
  /** verdicts on heat and vapour: the last answer, until a newer one is there */
  readonly heat: Report
  /** the model has gone on since the verdicts on heat and vapour were worked out */
  readonly isBehind: boolean
  /** what cures a finding, once it was sought, and whether the model has gone on since */
  readonly cures: (
    key: string,
  ) => { readonly remedies: readonly Remedy[]; readonly isBehind: boolean } | undefined
  /** seeks what cures a finding, a moment after the last change; once for each finding and model */
  readonly seekCures: (key: string) => void
  readonly settled: Settled | undefined
  readonly compared: Extract<StudyTold, { kind: 'compared' }> | undefined
  readonly fault: string | undefined
  /** asks for what takes longer, a moment after the last change */
  readonly settle: (place: ZonePlace) => void
  readonly compare: (
    asked: Omit<Extract<StudyAsked, { kind: 'compare' }>, 'number' | 'kind' | 'project'>,
  ) => void
  /** what was settled no longer holds */
  readonly unsettle: () => void
}

/** So long nothing has to move before longer work is begun. Ours. */
const rest_ms = 180

/** `isOpen`: whether there is a joint to be looked at; before that, nothing is worked out. */
export const newStudy = (board: Board, isOpen: () => boolean): Study => {
  let heat: Report = $state.raw({ findings: [], notApplicable: [] })
  let heatOf: Project | undefined = $state.raw()
  let cures: { key: string; project: Project; remedies: readonly Remedy[] } | undefined = $state.raw()
  let settled: Settled | undefined = $state.raw()
  let compared: Study['compared'] = $state.raw()
  let fault: string | undefined = $state.raw()
  // The session is a new value with every look; what is worked out depends on its project alone.
  const project = $derived(board.now.project)
  const isMoving = $derived(board.now.gesture !== undefined)
  let worker: Worker | undefined
  let number = 0
  const last: { [K in StudyAsked['kind']]?: { number: number; project: Project } } = {}
  const rest: { [K in StudyAsked['kind']]?: ReturnType<typeof setTimeout> } = {}

  const hear = (told: StudyTold): void => {
    if (told.kind === 'fault') fault = told.report
    else if (told.kind === 'report') {
      if (told.number !== last.report?.number) return
      heat = told.heat
      heatOf = last.report.project
    } else if (told.kind === 'cures') {
      if (told.number === last.cures?.number)
        cures = { key: told.key, project: last.cures.project, remedies: told.remedies }
    } else if (told.kind === 'settled') {
      if (told.number === last.settle?.number) settled = told.it
    } else if (told.kind === 'compared' && told.number === last.compare?.number) compared = told
  }
  const post = (asked: StudyAsked): void => {
    if (fault !== undefined) return
    if (!worker) {
      worker = new Worker(new URL('./study-worker.ts', import.meta.url), { type: 'module' })
      worker.addEventListener('message', (event: MessageEvent<StudyTold>) => hear(event.data))
      worker.addEventListener('error', event => {
        event.preventDefault()
        fault = event.message || 'the worker of the study did not start'
      })
    }
    last[asked.kind] = { number: asked.number, project: asked.project }
    worker.postMessage(asked)
  }
  const afterRest = (kind: StudyAsked['kind'], asked: () => StudyAsked): void => {
    clearTimeout(rest[kind])
    rest[kind] = setTimeout(() => post(asked()), rest_ms)
  }

  // Rules are answered again a moment after each change, whether heat is shown or not.
  $effect(() => {
    const still = project
    if (!isMoving && isOpen())
      afterRest('report', () => ({ number: ++number, kind: 'report', project: still }))
  })

  return {
    get heat() {
      return heat
    },
    get isBehind() {
      return heatOf !== project
    },
    cures: key =>
      cures?.key === key ? { remedies: cures.remedies, isBehind: cures.project !== project } : undefined,
    seekCures: key => {
      const still = project
      if (isMoving || (cures?.key === key && cures.project === still)) return
      afterRest('cures', () => ({ number: ++number, kind: 'cures', project: still, key }))
    },
    get settled() {
      return settled
    },
    get compared() {
      return compared
    },
    get fault() {
      return fault
    },
    settle: place => {
      const still = project
      afterRest('settle', () => ({ number: ++number, kind: 'settle', project: still, place }))
    },
    compare: asked => {
      compared = undefined
      post({ number: ++number, kind: 'compare', project, ...asked })
    },
    unsettle: () => {
      settled = undefined
      clearTimeout(rest.settle)
      delete last.settle
    },
  }
}
