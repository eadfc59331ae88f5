import { describe, expect, it } from 'vitest'
import { type Action, beginSession, deriving, dispatch, gripsOf, typedAt, widthAt } from '../../app/editor'
import { samples } from '../../core/detail'
import { check } from '../../core/rules'
import { same } from '../../core/words'

const [right] = samples.map(it => it.project)
if (!right) throw new Error('a sample is needed')
const session = beginSession(right)
const joint = gripsOf(right, session.view).find(it => it.at.field === 'joint.planned')
if (!joint) throw new Error('the joint can be taken by hand')
const widened: Action = { kind: 'edit', ...typedAt(joint, 40) }

describe('what follows from a session', () => {
  it('is the cut of the view, its joint, and every verdict', () => {
    const { place, section, band, report } = deriving()(session)
    expect(place).toMatchObject({ opening: session.view.opening, side: session.view.side })
    expect(section).toMatchObject({ side: session.view.side, zone: place.zone.id, state: 'planned' })
    expect(band.planned_mm).toBe(joint.value_mm)
    expect(report).toEqual(check(right))
  })

  it('is the very same answer while project and cut are, whatever else changes', () => {
    const derive = deriving()
    const first = derive(session)
    const looked = dispatch(session, { kind: 'look', view: { zoom: 2 } }).session
    const picked = dispatch(looked, { kind: 'select', parts: [joint.part] }).session
    expect(derive(picked).section).toBe(first.section)
    expect(derive(picked).report).toBe(first.report)
  })

  it('is a new answer after an edit, and the verdicts stay when only the cut is another', () => {
    const derive = deriving()
    const first = derive(session)
    const other = derive(dispatch(session, { kind: 'look', view: { side: 'head' } }).session)
    expect(other.section.side).toBe('head')
    expect(other.report).toBe(first.report)
    const edited = derive(dispatch(session, widened).session)
    expect(edited.band.planned_mm).toBe(40)
    expect(edited.report.findings.some(it => it.verdict === 'not-met')).toBe(true)
  })

  it('can be cut at the narrowest and at the widest joint', () => {
    const derive = deriving()
    const { band } = derive(session)
    for (const state of ['narrowest', 'widest'] as const) {
      const { section } = derive(session, state)
      expect(section.state).toBe(state)
      const frame = section.regions.filter(it => it.part === right.openings[session.view.opening]?.frame)
      const flank = Math.min(...frame.flatMap(it => it.outline.map(([x]) => x)))
      expect(flank).toBeCloseTo(widthAt(band, state), 3)
    }
  })
})

it('a typed value in the middle of a drag takes over from the pointer', () => {
  const dragged = dispatch(session, { kind: 'preview', ...typedAt(joint, 17) }).session
  const done = dispatch(dispatch(dragged, { kind: 'preview', ...typedAt(joint, 18.5) }).session, {
    kind: 'settle',
  })
  expect(done.session.past).toHaveLength(1)
  expect(done.session.past[0]?.says).toEqual(typedAt(joint, 18.5).says)
  expect(
    dispatch(done.session, { kind: 'edit', edits: typedAt(joint, -1).edits, says: same('') }).problems,
  ).not.toEqual([])
})
