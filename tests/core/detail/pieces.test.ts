import { describe, expect, it, test } from 'vitest'
import {
  applyEdit,
  type Edit,
  known,
  knownChoice,
  materialOf,
  openProject,
  partsOf,
  type Piece,
  pieceOf,
  type Project,
  readClip,
  samples,
  saveProject,
  writeClip,
  zonesOf,
} from '../../../core/detail'
import { practiceOf } from '../../../core/practice'
import { specified } from '../../../core/units'
import { randomFrom } from '../../given/random'

const [first, second] = samples.map(it => it.project)
if (!first || !second) throw new Error('two samples are needed')

const after = (project: Project, edit: Edit): Project => {
  const found = applyEdit(project, edit)
  if (!found.ok) throw new Error(found.problems[0].say.en)
  return found.value
}
const place = (project: Project) => zonesOf(project).find(it => it.side === 'left') ?? zonesOf(project)[0]
const jointIn = (project: Project) => project.joints[place(project)?.zone.joint ?? '']
const layersIn = (project: Project) => Object.values(project.walls)[0]?.layers ?? []
const seal = jointIn(first)?.seals[0]?.id ?? ''

describe('a seal that is taken out', () => {
  const out = after(first, { kind: 'take-out', part: seal })

  it('is no part of the cut, and nothing of it is lost', () => {
    const zone = place(out)
    expect(zone && partsOf(out, zone).some(it => it.id === seal)).toBe(false)
    expect(jointIn(out)?.out).toEqual([jointIn(first)?.seals[0]])
    expect(openProject(saveProject(out))).toMatchObject({ ok: true, value: { project: out, notes: [] } })
  })

  it('is put back as it was, in its place', () => {
    expect(after(out, { kind: 'put-back', part: seal })).toEqual(first)
  })

  it('is not taken out twice, nor put back when it is there', () => {
    expect(applyEdit(out, { kind: 'take-out', part: seal }).ok).toBe(false)
    expect(applyEdit(first, { kind: 'put-back', part: seal }).ok).toBe(false)
  })
})

describe('a name', () => {
  const [layer] = layersIn(first)
  it('stands in the list in place of what a part is, until it is taken back', () => {
    const named = after(first, { kind: 'rename', part: layer?.id ?? '', to: '  Old render  ' })
    const zone = place(named)
    expect(zone && partsOf(named, zone).find(it => it.id === layer?.id)?.name.de).toBe('Old render')
    expect(after(named, { kind: 'rename', part: layer?.id ?? '', to: '' })).toEqual(first)
  })

  it('goes with its part', () => {
    const named = after(first, { kind: 'rename', part: seal, to: 'outer' })
    expect(after(named, { kind: 'remove', part: seal }).names).toBeUndefined()
  })

  it.each([
    ['nobody', 'x'],
    [seal, 'x'.repeat(81)],
  ])('of %s is refused where there is no such part, or it is too long', (part, to) => {
    expect(applyEdit(first, { kind: 'rename', part, to }).ok).toBe(false)
  })
})

describe('what is declared of a layer', () => {
  const [layer] = layersIn(first).filter(it => it.duties.includes('insulating'))
  const at = { field: 'layer.lambda', part: layer?.id ?? '' }
  const stated = after(first, { kind: 'state', at, to: specified(0.021) })

  it('goes before what the library says of its material, in that layer alone', () => {
    expect(known(first, at)).toMatchObject({
      origin: 'material',
      value: materialOf(first, layer?.material ?? '')?.lambda_W_mK,
    })
    expect(materialOf(stated, layer?.material ?? '', layer?.id)?.lambda_W_mK).toBe(0.021)
    expect(materialOf(stated, layer?.material ?? '')).toEqual(materialOf(first, layer?.material ?? ''))
  })

  it('does not go on to another material', () => {
    const other = after(stated, {
      kind: 'state',
      at: { field: 'layer.material', part: at.part },
      to: specified('wood-fibre'),
    })
    expect(known(other, at)?.origin).toBe('material')
    expect(other.materials['wood-fibre']?.id).toBe('wood-fibre')
  })
})

test('another layer takes over bearing, and no frame moves in the wall', () => {
  const behind = layersIn(first).at(-1)
  const before = Object.values(first.openings)[0]
  const next = after(first, {
    kind: 'state',
    at: { field: 'layer.duty-bearing', part: behind?.id ?? '' },
    to: specified('yes'),
  })
  const bearing = layersIn(next).filter(it => it.duties.includes('bearing'))
  expect(bearing.map(it => it.id)).toEqual([behind?.id])
  const masonry_mm = layersIn(first).find(it => it.duties.includes('bearing'))?.thickness_mm.value ?? 0
  expect(Object.values(next.openings)[0]?.position_mm.value).toBe(
    (before?.position_mm.value ?? 0) - masonry_mm,
  )
  expect(knownChoice(next, { field: 'layer.duty-bearing', part: layersIn(first)[2]?.id ?? '' })?.value).toBe(
    'no',
  )
})

/** Every piece that the first sample has, copied as text. */
const pieces: readonly (readonly [Piece['kind'], Piece])[] = zonesOf(first).flatMap(zone =>
  [...partsOf(first, zone).map(it => it.id), zone.zone.joint, ...Object.keys(first.walls)].flatMap(part => {
    const piece = pieceOf(first, zone, part)
    return piece ? [[piece.kind, piece] as const] : []
  }),
)
const kinds = [...new Set(pieces.map(([kind]) => kind))]

describe('a piece', () => {
  it.each(kinds)(
    'of the kind %s goes through the clipboard into another file and can be saved there',
    kind => {
      const piece = pieces.find(([one]) => one === kind)?.[1]
      const read = readClip(writeClip(piece as Piece)) // the kinds are those of the pieces
      expect(read).toEqual({ ok: true, value: piece })
      const zone = place(second)
      if (!read.ok || !zone) throw new Error('nothing to paste')
      const next = after(second, { kind: 'paste', piece: read.value, into: zone.zone.id })
      expect(openProject(saveProject(next))).toMatchObject({ ok: true, value: { project: next } })
    },
  )

  it('is layers, seals, a joint, fixings, a frame and a wall', () => {
    expect(kinds).toEqual(expect.arrayContaining(['layer', 'seal', 'joint', 'fixing', 'frame', 'wall']))
  })

  it('that is pasted gets its own name, and the seal of its plane gives way', () => {
    const zone = place(first)
    const piece = zone && pieceOf(first, zone, seal)
    if (!zone || !piece) throw new Error('nothing to paste')
    const next = after(first, { kind: 'paste', piece, into: zone.zone.id })
    expect(jointIn(next)?.seals).toHaveLength(jointIn(first)?.seals.length ?? 0)
    expect(jointIn(next)?.seals[0]).toEqual({ ...jointIn(first)?.seals[0], id: jointIn(next)?.seals[0]?.id })
    expect(jointIn(next)?.seals[0]?.id).not.toBe(seal)
  })

  it('brings a material that means something else here along under another name', () => {
    const [layer] = layersIn(first)
    const own = first.materials[layer?.material ?? '']
    const zone = place(first)
    const piece = zone && pieceOf(first, zone, layer?.id ?? '')
    if (!zone || !own || piece?.kind !== 'layer') throw new Error('nothing to paste')
    const stranger = { ...own, lambda_W_mK: 0.5 }
    const next = after(first, {
      kind: 'paste',
      piece: { ...piece, materials: { [own.id]: stranger } },
      into: zone.zone.id,
    })
    expect(next.materials[own.id]).toEqual(own)
    expect(materialOf(next, layersIn(next).at(-1)?.material ?? '')?.lambda_W_mK).toBe(0.5)
  })

  it('of a layer is duplicated beside it, and bears nothing', () => {
    const bearing = layersIn(first).findIndex(it => it.duties.includes('bearing'))
    const next = after(first, { kind: 'duplicate', part: layersIn(first)[bearing]?.id ?? '' })
    const [a, b] = layersIn(next).slice(bearing, bearing + 2)
    expect(b).toEqual({ ...a, id: b?.id, duties: a?.duties.filter(it => it !== 'bearing') })
    expect(applyEdit(first, { kind: 'duplicate', part: seal }).ok).toBe(false)
  })
})

describe('text from anywhere', () => {
  const text = writeClip(pieces[0]?.[1] as Piece) // the sample has parts
  it.each([
    ['nothing', ''],
    ['prose', 'a tape 20/10–18'],
    ['another file of ours', saveProject(first)],
    ['a piece cut short', text.slice(0, -20)],
    ['a piece with more in it', text.replace('"piece"', '"extra": 1, "piece"')],
    ['a layer thinner than nothing', text.replace(/"value": \d+/, '"value": -4')],
    ['brackets without end', `{"format":{"name":"jambwright-piece"},"piece":${'['.repeat(5000)}`],
    [
      'a prototype',
      '{"format":{"name":"jambwright-piece","version":1},"piece":{"__proto__":{"kind":"layer"}}}',
    ],
  ])('%s is refused with its place, and nothing is thrown', (_, clip) => {
    const read = readClip(clip)
    expect(read.ok).toBe(false)
    if (!read.ok) expect(read.problems[0].at).not.toBe('')
  })

  it('mutated 500 times is read as a sound piece or refused', () => {
    const random = randomFrom(7)
    for (let i = 0; i < 500; i++) {
      const at = random.whole(0, text.length - 1)
      const to = random.one(['', '}', '"', '9', '-1', 'null', '\\u0000', '1e99'])
      const read = readClip(text.slice(0, at) + to + text.slice(at + random.whole(0, 3)))
      if (!read.ok) continue
      const zone = place(second)
      const pasted = zone && applyEdit(second, { kind: 'paste', piece: read.value, into: zone.zone.id })
      if (pasted?.ok) expect(openProject(saveProject(pasted.value)).ok).toBe(true)
    }
  })
})

describe('an opening', () => {
  const id = Object.keys(first.openings)[0] ?? ''
  const two = after(first, { kind: 'duplicate', part: id })
  const [one, copy] = Object.values(two.openings)

  it('is made twice, with joints of its own and the same wall and frame', () => {
    expect(openProject(saveProject(two))).toMatchObject({ ok: true, value: { project: two, notes: [] } })
    expect(copy).toMatchObject({ wall: one?.wall, frame: one?.frame, position_mm: one?.position_mm })
    const joints = (it: typeof one) =>
      Object.values(it?.sides ?? {}).flatMap(zones => zones.map(zone => zone.joint))
    expect(joints(copy).filter(it => joints(one).includes(it))).toEqual([])
    expect(new Set(joints(copy)).size).toBe(new Set(joints(one)).size)
    expect(copy?.survey).toBeUndefined()
  })

  it('goes again with the joints that only it had; the last one stays', () => {
    const back = after(two, { kind: 'remove', part: copy?.id ?? '' })
    expect({ ...back, next: first.next }).toEqual(first)
    expect(applyEdit(first, { kind: 'remove', part: id }).ok).toBe(false)
  })
})

describe('a limit of one’s own', () => {
  const row = practiceOf(first.practice).limits['vapour-order']?.[0]
  if (!row) throw new Error('the practice sets this limit')
  const own = (least: number, note: string): Edit => ({
    kind: 'own-limit',
    row: { limit: 'vapour-order', row: { ...row, then: { least } }, note },
  })
  const stated = after(first, own(5, 'house rule 12'))

  it('goes before that of the practice, in the name of the office with its reason', () => {
    expect(practiceOf(stated.practice).limits['vapour-order']?.[0]).toMatchObject({
      then: { least: 5 },
      cite: { source: 'own', clause: 'house rule 12', trust: 'ours' },
    })
    expect(openProject(saveProject(stated))).toMatchObject({ ok: true, value: { project: stated } })
  })

  it('takes the place of the one before, and goes again', () => {
    const again = after(stated, own(6, 'house rule 13'))
    expect(again.practice.own.map(it => it.note)).toEqual(['house rule 13'])
    expect(after(again, { kind: 'drop-limit', limit: 'vapour-order', when: row.when })).toEqual(first)
  })

  it.each([
    ['no reason', own(5, ' ')],
    ['no number', own(Number.NaN, 'house rule')],
  ])('with %s is refused', (_, edit) => {
    expect(applyEdit(first, edit).ok).toBe(false)
  })
})
