import { describe, expect, it } from 'vitest'
import { type View, dragged, firstView, gripsOf, measuresOf } from '../../app/editor'
import { type Project, applyEdits, samples } from '../../core/detail'
import { sides } from '../../core/kinds'
import { isInside, exactly, specified } from '../../core/units'

const cuts = samples.flatMap(({ file, project }) =>
  sides.map(side => [`${file}, ${side}`, project, { ...firstView(project), side }] as const),
)
const free = { reach_mm: 2, held: true }

const gripOf = (project: Project, view: View, field: string) => {
  const grip = gripsOf(project, view).find(it => it.at.field === field)
  if (!grip) throw new Error(`no grip for ${field}`)
  return grip
}

describe.each(cuts)('%s', (_, project, view) => {
  const grips = gripsOf(project, view)

  it('frame, joint and every layer can be taken by hand', () => {
    const fields = grips.map(it => it.at.field)
    expect(fields).toEqual(expect.arrayContaining(['opening.position', 'joint.planned', 'layer.thickness']))
    const [wall] = Object.values(project.walls)
    expect(fields.filter(it => it === 'layer.thickness')).toHaveLength(wall?.layers.length ?? 0)
  })

  it.each(grips.map(it => [it.at.field, it] as const))(
    '%s: the face goes as far as its value',
    (field, grip) => {
      const by_mm = 1
      const changed = applyEdits(project, [
        { kind: 'state', at: grip.at, to: specified(grip.value_mm + by_mm) },
      ])
      const after =
        changed.ok &&
        gripsOf(changed.value, view).find(it => it.at.field === field && it.at.part === grip.at.part)
      expect(after).toBeTruthy()
      if (!after) return
      expect(after.value_mm).toBeCloseTo(grip.value_mm + by_mm, 9)
      const went = (axis: 0 | 1) => after.place[axis] - grip.place[axis]
      expect(went(0) * grip.along[0] + went(1) * grip.along[1]).toBeCloseTo(by_mm, 6)
    },
  )

  it('measured from the stretch that is shown, every size is the value of its field', () => {
    for (const grip of grips) {
      const [size] = measuresOf(project, view, grip)
      expect(size?.value_mm).toBe(grip.value_mm)
      expect(
        Math.hypot((size?.to[0] ?? 0) - (size?.from[0] ?? 0), (size?.to[1] ?? 0) - (size?.from[1] ?? 0)),
      ).toBeCloseTo(Math.abs(grip.value_mm), 9)
    }
  })
})

describe('dragging the frame of the right sample', () => {
  const [{ project } = { project: undefined }] = samples
  if (!project) throw new Error('no sample')
  const view = firstView(project)
  const grip = gripOf(project, view, 'opening.position')
  const drag = (moved_mm: number, reach = free) =>
    dragged(project, view, { grip, moved: [7, moved_mm], reach })

  it('takes the way along the depth only, to a tenth of a millimetre', () => {
    expect(drag(3.5321).value_mm).toBe(18.5)
    expect(drag(3.5321).edits).toEqual([
      { kind: 'state', at: grip.at, to: { value: 18.5, basis: 'specified' } },
    ])
  })

  it('comes to rest flush with the bearing layer, by its corner', () => {
    const caught = drag(-14, { reach_mm: 2, held: false })
    expect(caught).toMatchObject({ value_mm: 0, snap: 'corner' })
    expect(drag(-14)).not.toHaveProperty('snap')
  })

  it('keeps whole millimetres where nothing else catches', () => {
    expect(drag(6.3, { reach_mm: 0.5, held: false })).toMatchObject({ value_mm: 21, snap: 'grid' })
  })

  it('stops where no geometry exists, and says why', () => {
    const far = drag(5000)
    expect(far.stoppedBy?.en).toContain('between the outer skin and the inner face')
    const after = applyEdits(project, far.edits)
    expect(after.ok).toBe(true)
  })

  it('names what it does in both languages', () => {
    expect(drag(3.5321).says).toEqual({
      en: 'From bearing layer 18.5\u00a0mm',
      de: 'Ab tragender Schicht 18,5\u00a0mm',
    })
  })

  it('shows the gaps to both faces of the wall, which add up with the frame', () => {
    const gaps = measuresOf(project, view, grip).filter(it => it.kind === 'gap')
    expect(gaps).toHaveLength(2)
    const [wall] = Object.values(project.walls)
    const wall_mm = (wall?.layers ?? []).reduce((sum, it) => sum + it.thickness_mm.value, 0)
    const frame_mm = (gaps[1]?.from[1] ?? 0) - (gaps[0]?.to[1] ?? 0)
    expect((gaps[0]?.value_mm ?? 0) + frame_mm + (gaps[1]?.value_mm ?? 0)).toBeCloseTo(wall_mm, 9)
    expect(isInside(exactly(frame_mm), { unit: 'mm', min: 60, max: 100 })).toBe(true)
  })
})
