import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type Action,
  type Session,
  beginSession,
  dispatch,
  gripsOf,
  historyDepth,
  isUnsaved,
  nudge,
  placeOf,
  selectableIn,
  typedAt,
} from '../../app/editor'
import { type Edit, openProject, samples, saveProject } from '../../core/detail'
import { specified } from '../../core/units'
import { same } from '../../core/words'

const [right, wrong] = samples.map(it => it.project)
if (!right || !wrong) throw new Error('two samples are needed')

const begun = beginSession(right)
const opening = begun.view.opening
const [joint = ''] = Object.keys(right.joints)
const [wall] = Object.values(right.walls)
const layer = wall?.layers[0].id ?? ''
const tape = right.joints[joint]?.seals[0]?.id ?? ''

const frameAt = (value: number): Edit => ({
  kind: 'state',
  at: { field: 'opening.position', part: opening },
  to: specified(value),
})
const edit = (...edits: readonly [Edit, ...Edit[]]): Action => ({ kind: 'edit', edits, says: same('edit') })
const preview = (value: number): Action => ({ kind: 'preview', edits: [frameAt(value)], says: same('drag') })
const position = (session: Session) => session.project.openings[opening]?.position_mm.value

/** The session after actions, none of which may be refused. */
const after = (session: Session, ...actions: readonly Action[]): Session =>
  actions.reduce((so, action) => {
    const done = dispatch(so, action)
    expect(done.problems).toEqual([])
    return done.session
  }, session)

describe('a typed value', () => {
  it('is one step, and undo brings back the very project', () => {
    const typed = after(begun, edit(frameAt(20)))
    expect(position(typed)).toBe(20)
    expect(typed.past).toHaveLength(1)
    const back = after(typed, { kind: 'undo' })
    expect(back.project).toBe(right)
    expect(position(after(back, { kind: 'redo' }))).toBe(20)
  })

  it('that changes nothing is no step', () => {
    const typed = after(begun, edit(frameAt(right.openings[opening]?.position_mm.value ?? 0)))
    expect(typed.past).toEqual([])
    expect(isUnsaved(typed)).toBe(false)
  })

  it('that is refused leaves everything as it was and says why', () => {
    const refused = dispatch(begun, edit(frameAt(99_999)))
    expect(refused.session).toBe(begun)
    expect(refused.problems[0]?.allowed).toMatchObject({ unit: 'mm' })
  })

  it('ends the future that was undone', () => {
    const session = after(begun, edit(frameAt(20)), { kind: 'undo' }, edit(frameAt(22)))
    expect(session.future).toEqual([])
    expect(after(session, { kind: 'redo' })).toBe(session)
  })
})

describe('a drag', () => {
  it('of sixty moves is one step back to the exact start', () => {
    const moves = Array.from({ length: 60 }, (_, at) => preview(16 + at / 10))
    const dragged = after(begun, ...moves, { kind: 'settle' })
    expect(position(dragged)).toBeCloseTo(21.9)
    expect(dragged.past).toHaveLength(1)
    expect(after(dragged, { kind: 'undo' }).project).toBe(right)
  })

  it('that comes back to where it began is no step', () => {
    const start = right.openings[opening]?.position_mm.value ?? 0
    const dragged = after(begun, preview(20), preview(start), { kind: 'settle' })
    expect(dragged.past).toEqual([])
    expect(isUnsaved(dragged)).toBe(false)
  })

  it('is taken back by Esc and by undo, and only the drag', () => {
    const typed = after(begun, edit(frameAt(20)))
    for (const kind of ['abandon', 'undo'] as const) {
      const session = after(typed, preview(30), { kind })
      expect(position(session)).toBe(20)
      expect(session.past).toHaveLength(1)
      expect(session.gesture).toBeUndefined()
    }
  })

  it('keeps its last good state where it is refused, and goes on', () => {
    const held = after(begun, preview(20))
    const refused = dispatch(held, preview(99_999))
    expect(refused.session).toBe(held)
    expect(refused.problems).not.toEqual([])
    expect(position(after(refused.session, preview(21), { kind: 'settle' }))).toBe(21)
  })

  it('is taken over by a typed value, and is still one step', () => {
    const grip = gripsOf(right, begun.view).find(it => it.at.field === 'opening.position')
    if (!grip) throw new Error('the frame can be taken by hand')
    const session = after(begun, preview(20), { kind: 'preview', ...typedAt(grip, 18.5) }, { kind: 'settle' })
    expect(position(session)).toBe(18.5)
    expect(session.past.map(it => it.says)).toEqual([typedAt(grip, 18.5).says])
    expect(dispatch(begun, { kind: 'preview', ...typedAt(grip, 99_999) }).problems).not.toEqual([])
  })

  it('is settled by a typed value that comes in between', () => {
    const session = after(begun, preview(20), edit({ kind: 'remove', part: tape }))
    expect(session.past).toHaveLength(2)
    expect(after(session, { kind: 'undo' }, { kind: 'undo' }).project).toBe(right)
  })
})

describe('an arrow key', () => {
  const frame = gripsOf(right, begun.view).find(it => it.at.field === 'opening.position')?.part ?? ''

  it('held for forty repeats is one step of forty millimetres', () => {
    let session = after(begun, { kind: 'select', parts: [frame] })
    for (let repeat = 0; repeat < 40; repeat++) {
      const action = nudge(session, { towards: [0, 1], by_mm: 1 })
      expect(action?.kind).toBe('preview')
      if (action) session = after(session, action)
    }
    session = after(session, { kind: 'settle' })
    expect(position(session)).toBe((right.openings[opening]?.position_mm.value ?? 0) + 40)
    expect(after(session, { kind: 'undo' }).project).toBe(right)
  })

  it('moves against the way of a face as well, in tenths that do not drift', () => {
    let session = after(begun, { kind: 'select', parts: [frame] })
    for (let repeat = 0; repeat < 3; repeat++) {
      const action = nudge(session, { towards: [0, -1], by_mm: 0.1 })
      if (action) session = after(session, action)
    }
    expect(position(session)).toBe(14.7)
  })

  it('does nothing where nothing is selected, or nothing of it moves that way', () => {
    expect(nudge(begun, { towards: [0, 1], by_mm: 1 })).toBeUndefined()
    const session = after(begun, { kind: 'select', parts: [frame] })
    expect(nudge(session, { towards: [1, 0], by_mm: 1 })).toBeUndefined()
  })
})

describe('what is selected', () => {
  it('is only what there is', () => {
    expect(after(begun, { kind: 'select', parts: [tape, 'nobody'] }).selection).toEqual([tape])
  })

  it('goes with a part that is taken out, and comes back with it', () => {
    const session = after(
      begun,
      { kind: 'select', parts: [tape, layer] },
      edit({ kind: 'remove', part: tape }),
    )
    expect(session.selection).toEqual([layer])
    expect(after(session, { kind: 'undo' }).selection).toEqual([tape, layer])
  })

  it('covers every part that a grip belongs to', () => {
    const parts = selectableIn(right)
    expect(gripsOf(right, begun.view).every(it => parts.has(it.part))).toBe(true)
  })
})

describe('a long day', () => {
  it('of 500 edits is gone back step by step, each with the selection that it had', () => {
    const parts = [tape, layer, joint]
    let session = begun
    const selections: string[] = []
    for (let at = 0; at < historyDepth; at++) {
      const part = parts[at % parts.length] ?? ''
      selections.push(part)
      session = after(session, { kind: 'select', parts: [part] }, edit(frameAt((at % 40) + 0.5)))
    }
    expect(session.past).toHaveLength(historyDepth)
    for (const part of selections.toReversed()) {
      session = dispatch(session, { kind: 'undo' }).session
      expect(session.selection).toEqual([part])
    }
    expect(session.project).toBe(right)
    expect(session.future).toHaveLength(historyDepth)
  })
})

describe('looking', () => {
  it('is no change of the work and not undone', () => {
    const session = after(begun, { kind: 'look', view: { zoom: 3, at: [10, 20] } })
    expect(session.view).toMatchObject({ zoom: 3, at: [10, 20] })
    expect(session.past).toEqual([])
    expect(session.revision).toBe(begun.revision)
  })

  it('at another cut shows it whole; the same cut keeps its place', () => {
    const near = after(begun, { kind: 'look', view: { zoom: 3, at: [10, 20] } })
    expect(after(near, { kind: 'look', view: { side: 'left' } }).view.zoom).toBe(3)
    expect(after(near, { kind: 'look', view: { side: 'head' } }).view).toEqual({ opening, side: 'head' })
    expect(after(near, { kind: 'fit' }).view).toEqual({ opening, side: 'left' })
  })

  it('at a zone keeps to it until another cut is asked for, and to the first where it is gone', () => {
    const [zone] = right.openings[opening]?.sides.left ?? []
    const split = after(begun, edit({ kind: 'split-zone', zone: zone?.id ?? '', at_mm: 600 }))
    const upper = after(split, { kind: 'look', view: { zone: zone?.id ?? '' } })
    expect(placeOf(upper.project, upper.view).zone.id).toBe(zone?.id)
    expect(placeOf(upper.project, after(upper, { kind: 'fit' }).view).zone.id).toBe(zone?.id)
    expect(placeOf(split.project, split.view).zone.to_mm).toBe(600)
    expect(placeOf(right, { ...upper.view, zone: 'gone' }).zone.id).toBe(zone?.id)
    expect(after(upper, { kind: 'look', view: { side: 'head' } }).view.zone).toBeUndefined()
  })

  it('goes to the first opening where that which was looked at is taken back', () => {
    const two = after(begun, edit({ kind: 'duplicate', part: opening }))
    const other = Object.keys(two.project.openings).find(it => it !== opening) ?? ''
    const there = after(two, { kind: 'look', view: { opening: other } })
    expect(there.view.opening).toBe(other)
    expect(after(there, { kind: 'undo' }).view.opening).toBe(opening)
  })

  it('at an opening that is not there changes nothing', () => {
    expect(after(begun, { kind: 'look', view: { opening: 'nobody' } }).view).toEqual(begun.view)
  })
})

describe('saving', () => {
  it('counts for the revision that was written, not for what came after', () => {
    const typed = after(begun, edit(frameAt(20)))
    const later = after(typed, edit(frameAt(21)), { kind: 'saved', revision: typed.revision })
    expect(isUnsaved(later)).toBe(true)
    expect(isUnsaved(after(later, { kind: 'undo' }))).toBe(false)
  })

  it('another file begins anew, with a revision that no answer of the old one has', () => {
    const typed = after(begun, edit(frameAt(20)), edit(frameAt(21)), { kind: 'undo' })
    const opened = after(typed, { kind: 'open', project: wrong })
    expect(opened).toMatchObject({ project: wrong, past: [], future: [], selection: [] })
    expect(opened.revision).toBeGreaterThan(typed.newest)
    expect(isUnsaved(opened)).toBe(false)
  })
})

describe('laws under any course of actions', () => {
  const edits: fc.Arbitrary<Edit> = fc.oneof(
    fc.integer({ min: 0, max: 60 }).map(frameAt),
    fc.integer({ min: 1, max: 40 }).map((width): Edit => ({
      kind: 'state',
      at: { field: 'joint.planned', part: joint },
      to: specified(width),
    })),
    fc.integer({ min: 1, max: 300 }).map((thickness): Edit => ({
      kind: 'state',
      at: { field: 'layer.thickness', part: layer },
      to: specified(thickness),
    })),
    fc.constant<Edit>({ kind: 'remove', part: tape }),
  )
  const says = same('any')
  const actions: fc.Arbitrary<Action> = fc.oneof(
    edits.map((it): Action => ({ kind: 'edit', edits: [it], says })),
    edits.map((it): Action => ({ kind: 'preview', edits: [it], says })),
    fc.constantFrom<Action>({ kind: 'settle' }, { kind: 'abandon' }, { kind: 'undo' }, { kind: 'redo' }),
    fc.constant<Action>({ kind: 'select', parts: [tape, layer] }),
  )
  const run = (session: Session, all: readonly Action[]) =>
    all.reduce((so, action) => dispatch(so, action).session, session)

  it('undoing all of it leads back to the project that was opened, redoing to where it was', () => {
    fc.assert(
      fc.property(fc.array(actions, { maxLength: 40 }), all => {
        const there = dispatch(run(begun, all), { kind: 'settle' }).session
        const back = run(
          there,
          there.past.map(() => ({ kind: 'undo' })),
        )
        expect(back.project).toBe(right)
        expect(isUnsaved(back)).toBe(false)
        const again = run(
          back,
          there.past.map(() => ({ kind: 'redo' })),
        )
        expect(again.project).toBe(there.project)
        expect(again.revision).toBe(there.revision)
      }),
      { numRuns: 200 },
    )
  })

  it('no size that is stated changes the order of the layers', () => {
    const orderOf = (session: Session) =>
      Object.values(session.project.walls).map(it => it.layers.map(layer => layer.id))
    const sizes = actions.filter(it => !('edits' in it) || it.edits.every(each => each.kind === 'state'))
    fc.assert(
      fc.property(fc.array(sizes, { maxLength: 40 }), all => {
        expect(orderOf(run(begun, all))).toEqual(orderOf(begun))
      }),
      { numRuns: 100 },
    )
  })

  it('whatever was done, the project can be saved and comes back the same', () => {
    fc.assert(
      fc.property(fc.array(actions, { maxLength: 20 }), all => {
        const { project } = run(begun, all)
        expect(openProject(saveProject(project))).toMatchObject({ ok: true, value: { project, notes: [] } })
      }),
      { numRuns: 100 },
    )
  })

  it('one revision never means two projects', () => {
    fc.assert(
      fc.property(fc.array(actions, { maxLength: 40 }), all => {
        const seen = new Map([[begun.revision, begun.project]])
        all.reduce((so, action) => {
          const next = dispatch(so, action).session
          expect(seen.get(next.revision) ?? next.project).toBe(next.project)
          seen.set(next.revision, next.project)
          return next
        }, begun)
      }),
      { numRuns: 200 },
    )
  })

  it('the history is no deeper than it says, and its steps share what did not change', () => {
    const all = Array.from({ length: historyDepth + 20 }, (_, at) => edit(frameAt((at % 50) + 0.5)))
    const session = run(begun, all)
    expect(session.past).toHaveLength(historyDepth)
    expect(new Set(session.past.map(it => it.project.walls)).size).toBe(1)
    expect(new Set(session.past.map(it => it.project.openings)).size).toBe(historyDepth)
  })
})
