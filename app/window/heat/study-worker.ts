import '../no-eval'
import type { Project, ZonePlace } from '../../../core/detail'
import { emptyMemory } from '../../../core/rules'
import {
  heatReport,
  periodsTable,
  planesTable,
  profileTable,
  remediesOf,
  surenessOf,
  yearTable,
} from '../../../core/study'
import { ok, type Result } from '../../../core/units'
import { physicsDesk, sectionField, sectionVapour, solveZone, wetZone } from '../../../core/vapour'
import { comparedPlaces } from './compare'
import type { Settled, StudyAsked, StudyTold } from './study-messages'

/** Works out what takes longer than a frame: verdicts on heat and vapour, what cures a finding, how sure a result is, other places of the frame. */

const desk = physicsDesk()
const memory = emptyMemory()

const tell = (told: StudyTold): void => {
  const handed =
    told.kind === 'compared'
      ? told.places.flatMap(it => [it.bands, it.outlines, it.lines]).map(it => it.places.buffer)
      : []
  postMessage(told, { transfer: handed })
}

const answer = (it: StudyAsked): StudyTold => {
  const { number, project } = it
  if (it.kind === 'report') return { number, kind: 'report', heat: heatReport(project, desk, memory) }
  if (it.kind === 'cures')
    return { number, kind: 'cures', key: it.key, remedies: remediesOf(project, it.key, desk, memory) }
  if (it.kind === 'settle') {
    const found = settled(project, it.place)
    return found.ok
      ? { number, kind: 'settled', it: found.value }
      : { number, kind: 'problems', problems: found.problems }
  }
  const found = comparedPlaces(project, it.place, { language: it.language, size: it.size, physics: desk })
  return found.ok
    ? { number, kind: 'compared', ...found.value }
    : { number, kind: 'problems', problems: found.problems }
}

const settled = (project: Project, place: ZonePlace): Result<Settled> => {
  const sureness = surenessOf(project, place)
  if (!sureness.ok) return sureness
  const loss = solveZone(project, place, { purpose: 'heat-loss' })
  if (!loss.ok) return loss
  const { conditions, vapourView, solved } = loss.value
  const { planes, along } = sectionVapour(vapourView, 'joint', conditions)
  const { psi, coupling_W_mK, flow_W_m } = solved.heat
  return ok({
    sureness: sureness.value,
    flow_W_m,
    ...(psi ? { psi } : {}),
    ...(coupling_W_mK === undefined ? {} : { coupling_W_mK }),
    vapour: [
      planesTable(planes),
      ...(along.ok
        ? [
            profileTable(project, place, along.value),
            periodsTable(project, place, along.value),
            yearTable(along.value, conditions),
          ]
        : []),
    ],
    ...(along.ok ? { along: along.value } : {}),
    ...wetIn(project, place),
    vapourProblems: along.ok ? [] : along.problems,
  })
}

/** The zone where water gathers, in the resistances of the surface criterion. */
const wetIn = (project: Project, place: ZonePlace): Pick<Settled, 'wetZone'> => {
  const zone = solveZone(project, place, { purpose: 'surface-humidity' })
  if (!zone.ok) return {}
  const { vapourView, conditions, solved } = zone.value
  const field = sectionField(vapourView, solved.solution, conditions)
  return field.ok ? { wetZone: wetZone(field.value) } : {}
}

/** What waits, the last of each kind: questions that were overtaken are never begun. */
const waiting = new Map<StudyAsked['kind'], StudyAsked>()
const turn = new MessageChannel()
turn.port1.onmessage = () => {
  const [next] = waiting.values()
  if (!next) return
  waiting.delete(next.kind)
  try {
    tell(answer(next))
  } catch (error) {
    tell({
      number: next.number,
      kind: 'fault',
      report: error instanceof Error ? `${error.message}\n${error.stack ?? ''}` : String(error),
    })
  }
  if (waiting.size > 0) turn.port2.postMessage(undefined)
}
addEventListener('message', (event: MessageEvent<StudyAsked>) => {
  const isIdle = waiting.size === 0
  waiting.set(event.data.kind, event.data)
  if (isIdle) turn.port2.postMessage(undefined)
})
