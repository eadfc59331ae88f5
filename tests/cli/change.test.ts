import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { choices, fields, openProject, type Project } from '../../core/detail'
import { aFolder, sampleText, typed } from './given'

const folder = aFolder()
const aFile = (name: string, sample = 'protected-sill'): string => {
  const path = join(folder, `${name}.jamb`)
  writeFileSync(path, sampleText(sample))
  return path
}
/** With plain spaces in the place of those that do not break. */
const plain = (text: string): string => text.replace(/[\u00A0\u202F]/g, ' ')
const projectIn = (path: string): Project => {
  const opened = openProject(readFileSync(path, 'utf8'))
  if (!opened.ok) throw new Error(opened.problems[0].say.en)
  return opened.value.project
}
const openingIn = (path: string) => {
  const [opening] = Object.values(projectIn(path).openings)
  if (opening === undefined) throw new Error('no opening')
  return opening
}

describe('set without a value', () => {
  test('lists every value that a project has, with its range and why', async () => {
    const { code, out } = await typed('set', aFile('list'))
    expect(code).toBe(0)
    expect(plain(out)).toContain(
      '  opening.width  Frame width: 1200 mm, specified; 200–12000 mm (outer size of the frame)',
    )
    expect(plain(out)).toContain(
      '  sill.stays  Sill must stay: yes; yes | no (what is there already and must stay)',
    )
    const named = new Set(out.split('\n').map(it => it.trim().split('  ')[0]))
    const missing = [...fields, ...choices].map(it => it.id).filter(id => !named.has(id))
    // what is not listed belongs to parts that this project does not have
    expect(missing.filter(id => /^(opening|survey\.width|joint|frame|zone\.joint|fixing\.count|sill\.s)/.test(id))).toEqual([]) // prettier-ignore
  })

  test('lists one part, in German', async () => {
    const { out } = await typed('set', aFile('one'), '--part', 'zone-11', '--language', 'de')
    expect(out).toMatch(/^zone-11\n {2}zone\.joint {2}Fuge des Abschnitts: Joint behind the nib/)
    expect(out.split('\n')).toHaveLength(3)
  })

  test('says what there is where no value begins so', async () => {
    const { code, err } = await typed('set', aFile('none'), 'no.such')
    expect(code).toBe(2)
    expect(err).toContain('there is no such value; there are layer.thickness')
  })
})

describe('set reaches', () => {
  test.each([
    ['a title', ['title.place', 'Tellmark West'], (it: Project) => it.title.place, 'Tellmark West'],
    ['the lap of a nib', ['reveal.nib-lap', '60'], (it: Project) => Object.values(it.walls)[0]?.reveal.nibLap_mm?.value, 60],
    ['a name', ['name', 'Stone sill', '--part', 'sill-16'], (it: Project) => it.names?.['sill-16'], 'Stone sill'],
    ['the gap that a seal closes', ['seal.gap', 'rebate', '--part', 'seal-6'], (it: Project) => it.joints['joint-5']?.seals[0]?.gap, 'rebate'],
    ['an offset of a flank', ['survey.offset', '4', '--part', 'opening-14.left@600'], (it: Project) => it.openings['opening-14']?.survey?.offsets, [{ side: 'left', at_mm: 600, offset_mm: 4 }]],
    ['axes of fixings', ['fixing.positions-left', '1900 200,5; 900'], (it: Project) => it.openings['opening-14']?.fixings[0]?.positions_mm?.left, [200.5, 900, 1900]],
    // 2100 less 2 × (face 70 + corner 130) = 1700: four are 567 apart
    ['the spacing of fixings', ['fixing.spacing-right', '600'], (it: Project) => it.openings['opening-14']?.fixings[0]?.counts?.right?.value, 4],
  ] as const)('%s', async (name, args, read, wanted) => {
    const path = aFile(name.replace(/\W/g, '-'))
    expect(await typed('set', path, ...args)).toMatchObject({ code: 0, err: '' })
    expect(read(projectIn(path))).toEqual(wanted)
  }) // prettier-ignore

  test('the end of a zone, once a side is split, within what its neighbours leave', async () => {
    const path = aFile('zones')
    expect((await typed('edit', path, '{"kind":"split-zone","zone":"zone-11","at_mm":600}')).code).toBe(0)
    expect((await typed('set', path, 'zone.end', '700')).code).toBe(0)
    expect(openingIn(path).sides.left.map(it => it.to_mm)).toEqual([700, 2100])
    const { code, err } = await typed('set', path, 'zone.end', '2090')
    expect([code, plain(err)]).toEqual([
      2,
      'zone.end: 2090 mm is outside what is possible here: 50–2050 mm\n',
    ])
  })

  test('a value that is taken back', async () => {
    const path = aFile('clear')
    await typed('set', path, 'survey.joint-left-widest', '--clear')
    expect(openingIn(path).survey?.joints_mm?.left).toBeUndefined()
  })
})

describe('edit', () => {
  test.each([
    ['no JSON', '{nope', 'edit: this is no valid JSON\n'],
    ['an unknown kind', '{"kind":"chimney"}', /^edit: kind: one of: state, /],
    ['a wrong member', '[{"kind":"add","into":"opening-14","part":"box"},{"kind":"add","into":"opening-14","part":"chimney"}]', 'edit: 2. part: one of: fixing, block, mullion, transom, sill, threshold, box\n'],
    ['what the model refuses', '{"kind":"add","into":"opening-14","part":"sill"}', 'edit: opening-14: the opening has one already\n'],
  ] as const)('says what is wrong with %s and writes nothing', async (name, text, says) => {
    const path = aFile(`bad-${name.replace(/\W/g, '-')}`)
    const { code, err } = await typed('edit', path, text)
    expect(code).toBe(2)
    if (typeof says === 'string') expect(err).toBe(says)
    else expect(err).toMatch(says)
    expect(readFileSync(path, 'utf8')).toBe(sampleText('protected-sill'))
  }) // prettier-ignore

  test('adds, moves and takes out blocks, mullions and fixings', async () => {
    const path = aFile('parts', 'on-consoles')
    const { id } = openingIn(path)
    const before = openingIn(path)
    const edits = ['block', 'mullion', 'transom', 'fixing'].map(part => ({
      kind: 'add',
      into: id,
      part,
      at_mm: 400,
    }))
    expect((await typed('edit', path, JSON.stringify(edits))).code).toBe(0)
    const now = openingIn(path)
    expect(now.blocks.at(-1)).toMatchObject({
      kind: 'support',
      side: 'sill',
      at_mm: { value: 400, basis: 'assumed' },
    })
    const added = [now.blocks, now.mullions, now.transoms ?? [], now.fixings].map(it => it.at(-1)?.id ?? '')
    expect((await typed('set', path, 'block.at', '500', '--part', added[0] ?? '')).code).toBe(0)
    expect(openingIn(path).blocks.at(-1)?.at_mm.value).toBe(500)
    const out = added.map(part => ({ kind: 'remove', part }))
    expect((await typed('edit', path, JSON.stringify(out))).code).toBe(0)
    expect({ ...openingIn(path), transoms: undefined }).toEqual({ ...before, transoms: undefined })
  })
})

describe('photo', () => {
  const jpeg = join(folder, 'a.jpg')
  writeFileSync(jpeg, Buffer.from([0xff, 0xd8, 0xff, 0xe0, 1, 2, 3, 0xff, 0xd9]))

  test('is pinned inside the file, and listed', async () => {
    const path = aFile('pinned')
    const told = ['--side', 'left', '--at', '600', '--date', '2026-03-14', '--note', 'old putty']
    expect((await typed('photo', path, jpeg, ...told)).code).toBe(0)
    expect((await typed('photo', path)).out).toBe('photo-17\topening-14\tleft\t600\t2026-03-14\told putty\n')
    expect(Object.values(projectIn(path).photos ?? {})).toHaveLength(1)
  })

  test.each([
    ['a file that is none', () => aFile('no-jpeg'), [], 'this is no whole JPEG photo'],
    ['a place beyond its side', () => jpeg, ['--side', 'left', '--at', '9000'], 'a place along the side'],
    ['a day that is none', () => jpeg, ['--date', 'soon'], 'a day like 2026-03-14'],
  ] as const)('%s is refused', async (_, image, told, says) => {
    const { code, err } = await typed('photo', aFile('refused'), image(), ...told)
    expect(code).toBe(2)
    expect(err).toContain(says)
  })
})
