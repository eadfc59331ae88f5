import { type ZonePlace, zonesOf } from '../../../core/detail'
import type { Result } from '../../../core/units'
import { type PhysicsOf, physicsDesk, type ZonePhysics } from '../../../core/vapour'
import type { Board } from '../state/board.svelte'
import type { Settled, StudyAsked, StudyTold } from './study-messages'

/** What is worked out beside the window: answers for rules, and what takes longer once nothing moves. */
export type Study = {
  /** heat and vapour of a zone for rules: the last answer, until a newer one is there */
  readonly physics: PhysicsOf
  /** the model has gone on since the answers for rules were worked out */
  readonly isBehind: boolean
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

export const newStudy = (board: Board): Study => {
  let answers: ReadonlyMap<string, Result<ZonePhysics>> = $state.raw(new Map())
  let answeredFor: unknown = $state.raw()
  let settled: Settled | undefined = $state.raw()
  let compared: Study['compared'] = $state.raw()
  let fault: string | undefined = $state.raw()
  // The session is a new value with every look; what is worked out depends on its project alone.
  const project = $derived(board.now.project)
  const isMoving = $derived(board.now.gesture !== undefined)
  let worker: Worker | undefined
  let number = 0
  const last: { [K in StudyAsked['kind']]?: { number: number; project: unknown } } = {}
  const rest: { [K in StudyAsked['kind']]?: ReturnType<typeof setTimeout> } = {}
  /** for projects that are only tried, as remedies are: nobody waits for those in a drag */
  const trials = physicsDesk()

  const hear = (told: StudyTold): void => {
    if (told.kind === 'fault') fault = told.report
    else if (told.kind === 'physics') {
      if (told.number !== last.physics?.number) return
      answers = new Map(told.answers.map(it => [keyOf(it.place), it.found]))
      answeredFor = last.physics.project
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
    if (isMoving) return
    afterRest('physics', () => ({
      number: ++number,
      kind: 'physics',
      project: still,
      places: zonesOf(still),
    }))
  })

  return {
    physics: (asked, place) =>
      asked === project || asked === answeredFor ? answers.get(keyOf(place)) : trials(asked, place),
    get isBehind() {
      return answeredFor !== project
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
      const { project } = board.now
      afterRest('settle', () => ({ number: ++number, kind: 'settle', project, place }))
    },
    compare: asked => {
      const { project } = board.now
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

const keyOf = ({ opening, side, zone }: ZonePlace): string => `${opening} ${side} ${zone.id}`
