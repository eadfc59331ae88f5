import { describe, expect, it } from 'vitest'
import { type Action, beginSession, copied, dispatch, pasting, placeOf, type Session } from '../../app/editor'
import { listedPart } from '../../app/window/board/listed'
import { partRows } from '../../app/window/parts/rows'
import { type Edit, openProject, partsOf, saveProject, samples, zonesOf } from '../../core/detail'
import { drawSection, standInWindow, usualWindow, zoneLook } from '../../core/drawing'
import { jointBand } from '../../core/movement'
import { check } from '../../core/rules'
import { cutSection } from '../../core/section'
import { same } from '../../core/words'
import { type Random, randomFrom } from '../given/random'
import { randomEdit } from '../given/random-detail'

const says = same('any')
const one = <T>(random: Random, all: readonly T[]): T | undefined => {
  const [first, ...more] = all
  return first === undefined ? undefined : random.one([first, ...more])
}

/** What is done in the window beyond typing values: seals out and back, names, copies, joints of their own. */
const furtherEdit = (session: Session, random: Random): Edit | undefined => {
  const { project } = session
  const joints = Object.values(project.joints)
  const layers = Object.values(project.walls).flatMap(wall => wall.layers.map(layer => layer.id))
  const seals = joints.flatMap(joint => joint.seals.map(seal => seal.id))
  const out = joints.flatMap(joint => (joint.out ?? []).map(seal => seal.id))
  const zones = zonesOf(project).map(place => place.zone.id)
  const [seal, back, layer, zone] = [
    one(random, seals),
    one(random, out),
    one(random, layers),
    one(random, zones),
  ]
  const edits: readonly (Edit | undefined)[] = [
    seal === undefined ? undefined : { kind: 'take-out', part: seal },
    back === undefined ? undefined : { kind: 'put-back', part: back },
    layer === undefined ? undefined : { kind: 'duplicate', part: layer },
    layer === undefined ? undefined : { kind: 'move', part: layer },
    layer === undefined ? undefined : { kind: 'rename', part: layer, to: random.chance(0.3) ? '' : 'ours' },
    zone === undefined ? undefined : { kind: 'choose-joint', zone, joint: 'copy' },
    zone === undefined ? undefined : { kind: 'join-zones', zone },
  ]
  return one(random, edits)
}

const randomAction = (session: Session, random: Random): Action | undefined => {
  const turn = random.between(0, 1)
  if (turn < 0.08) return { kind: 'undo' }
  if (turn < 0.12) return { kind: 'redo' }
  if (turn < 0.2) {
    const parts = partsOf(session.project, placeOf(session.project, session.view)).map(part => part.id)
    const part = one(random, parts)
    const text = part === undefined ? undefined : copied({ ...session, selection: [part] })
    const paste = text === undefined ? undefined : pasting(session, text)
    return paste?.ok === true ? paste.value : undefined
  }
  const edit = turn < 0.45 ? furtherEdit(session, random) : randomEdit(session.project, random)
  return edit && { kind: random.chance(0.2) ? 'preview' : 'edit', edits: [edit], says }
}

const after = (seed: number): { readonly begun: Session; readonly session: Session } => {
  const random = randomFrom(seed)
  const sample = samples[seed % samples.length]
  if (sample === undefined) throw new Error('there are no samples')
  const begun = beginSession(sample.project)
  let session = begun
  for (let step = 0; step < 12; step++) {
    const action = randomAction(session, random)
    if (action) session = dispatch(session, action).session
  }
  return { begun, session: dispatch(session, { kind: 'settle' }).session }
}

/** Whether a part stands in a set under its own name or that of one of its members. */
const listedIn = (session: Session, seed: number) => {
  const { project } = session
  const place = one(randomFrom(seed), zonesOf(project))
  if (place === undefined) throw new Error('a project has zones')
  const band = jointBand(project, place.opening, place.side, place.zone.id)
  const parts = partsOf(project, place)
  const rows = partRows({
    project,
    place,
    parts,
    band,
    report: seed % 10 === 0 ? check(project) : { findings: [], notApplicable: [] },
  })
  const section = cutSection(project, place, { state: 'planned', width_mm: band.planned_mm })
  const { view } = drawSection(section, {
    ...zoneLook(project, place, 'en'),
    window: usualWindow(project, place, section),
    scale: 1,
    at: [0, 0],
    ...standInWindow,
    mirrored: false,
    show: { sizes: false, numbers: false },
  })
  const drawn = new Set(
    view.marks.flatMap(mark => ('part' in mark && mark.part ? [listedPart(parts, mark.part)] : [])),
  )
  const cut = new Set([...section.regions, ...section.lines].map(it => listedPart(parts, it.part)))
  return { place, rows, parts, drawn, cut }
}

describe('after any course of edits', () => {
  it.each(Array.from({ length: 20 }, (_, group) => group))(
    'list, drawing and file agree, group %i of 20',
    group => {
      for (let seed = group * 10 + 1; seed <= group * 10 + 10; seed++) {
        const { begun, session } = after(seed)
        const { project } = session
        const { place, rows, parts, drawn, cut } = listedIn(session, seed)
        const where = `seed ${seed}`
        const hasThreshold = place.side === 'sill' && project.openings[place.opening]?.threshold !== undefined

        // The file: what is saved comes back, whole.
        expect(openProject(saveProject(project)), where).toMatchObject({
          ok: true,
          value: { project, notes: [] },
        })

        // The list: every part of the cut once, numbered as on the sheet; what is taken out has no number.
        expect(
          rows.filter(row => row.number !== undefined).map(row => row.part.id),
          where,
        ).toEqual(parts.map(it => it.id))
        expect(new Set(rows.map(row => row.part.id)).size, where).toBe(rows.length)
        const out = (project.joints[place.zone.joint]?.out ?? []).map(seal => seal.id)
        expect(
          rows
            .filter(row => row.isOut)
            .map(row => row.part.id)
            .toSorted(),
          where,
        ).toEqual(out.toSorted())

        // The drawing: nothing is drawn that the list does not have, and every layer that the list has is drawn.
        const listed = new Set(rows.map(row => row.part.id))
        expect(
          [...drawn].filter(part => !listed.has(part)),
          where,
        ).toEqual([])
        expect(
          out.filter(part => drawn.has(part) || cut.has(part)),
          where,
        ).toEqual([])
        const built = rows
          // finishes of a wall may end over the floor and below the surface of a threshold
          .filter(row => (row.part.kind === 'layer' && !hasThreshold) || row.part.kind === 'frame')
          .map(row => row.part.id)
        expect(
          built.filter(part => !drawn.has(part)),
          where,
        ).toEqual([])

        // Undo leads all the way back.
        const undo = (so: Session): Session => dispatch(so, { kind: 'undo' }).session
        const back = session.past.reduce(undo, session)
        expect(back.project, where).toBe(begun.project)
      }
    },
  )
})
