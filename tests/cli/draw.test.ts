import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { openingOf, samples, saveProject } from '../../core/detail'
import { sides } from '../../core/kinds'
import { aFolder, typed } from './given'

const folder = aFolder()
const at = (name: string) => join(folder, name)
for (const { file, project } of samples) writeFileSync(at(`${file}.jamb`), saveProject(project))
const right = at('right-jamb.jamb')

describe('a drawing is written', () => {
  it.each(samples.flatMap(it => sides.map(side => [it.file, side] as const)))(
    'of %s, %s',
    async (file, side) => {
      const to = at(`${file}-${side}.svg`)
      const { code, out, err } = await typed('draw', at(`${file}.jamb`), '--to', to, '--cut', side)
      // a small sheet has its lists on a second one, which is a file beside it
      const paths = out.trimEnd().split('\n')
      expect({ code, paths, err }).toEqual({ code: 0, paths: [to, to.replace('.svg', '-2.svg')].slice(0, paths.length), err: '' }) // prettier-ignore
      const texts = paths.map(it => readFileSync(it, 'utf8'))
      for (const text of texts) expect(text).toMatch(/^<\?xml[\s\S]*<svg [\s\S]*<\/svg>\s*$/)
      expect(texts.map(it => it.includes('of 2</text>'))).toEqual(texts.map(() => texts.length === 2))
    },
  )

  it('the same twice, byte for byte', async () => {
    const written = async (name: string) => {
      await typed('draw', right, '--to', at(name))
      return readFileSync(at(name))
    }
    expect((await written('once.svg')).equals(await written('twice.svg'))).toBe(true)
  })

  it('of the left jamb where a jamb is asked for', async () => {
    await typed('draw', right, '--to', at('jamb.svg'))
    await typed('draw', right, '--to', at('left.svg'), '--cut', 'left')
    await typed('draw', right, '--to', at('head.svg'), '--cut', 'head')
    const [jamb, left, head] = ['jamb', 'left', 'head'].map(name => readFileSync(at(`${name}.svg`), 'utf8'))
    expect(jamb).toBe(left)
    expect(jamb).not.toBe(head)
  })

  it('at the scale that was asked for, true on paper', async () => {
    const sizeOf = async (scale: string) => {
      const to = at(`scale-${scale.replace(':', '-')}.svg`)
      expect(await typed('draw', right, '--to', to, '--scale', scale)).toMatchObject({ code: 0, err: '' })
      const text = readFileSync(to, 'utf8')
      expect(text).toContain(`scale ${scale}`)
      return /width="([\d.]+)mm"/.exec(text)?.[1]
    }
    expect([await sizeOf('1:2'), await sizeOf('1:5')].every(it => it === '210' || it === '420')).toBe(true)
  })

  it('with its joint drawn once more at the scale that was asked for, and without where none was', async () => {
    const drawn = async (enlarged: string) => {
      const to = at(`enlarged-${enlarged.replace(':', '-')}.svg`)
      const { code, err } = await typed('draw', right, '--to', to, '--paper', 'A3', '--enlarged', enlarged)
      expect({ code, err }).toEqual({ code: 0, err: '' })
      return readFileSync(to, 'utf8')
    }
    expect(await drawn('1:1')).toContain('Detail X  1:1')
    expect(await drawn('none')).not.toContain('Detail X')
  })

  it('with its temperature field where heat is to be shown, on layers of their own', async () => {
    for (const ending of ['svg', 'dxf', 'pdf']) {
      const to = at(`heat.${ending}`)
      const { code, err } = await typed('draw', right, '--to', to, '--show', 'heat', '--ink', 'colour')
      expect({ code, err }).toEqual({ code: 0, err: '' })
    }
    const [svg, dxf] = ['svg', 'dxf'].map(it => readFileSync(at(`heat.${it}`), 'utf8'))
    expect(svg).toContain('temperature field')
    expect(svg).toContain('mould limit 12.6')
    for (const layer of ['JW-HEAT', 'JW-ISOTHERM', 'JW-ISOTHERM-STRONG', 'JW-ISOTHERM-NAMED'])
      expect(dxf).toMatch(new RegExp(`^${layer}\\r?$`, 'm'))
    const several = await typed('draw', right, '--to', at('many.svg'), '--cut', 'all', '--show', 'heat')
    expect(several.code).toBe(2)
    expect(several.err).toContain('one cut at a time')
  })

  it('in the language and the ink that were asked for', async () => {
    await typed('draw', right, '--to', at('black.svg'))
    await typed('draw', right, '--to', at('colour.svg'), '--ink', 'colour', '--language', 'de')
    const [black, colour] = ['black', 'colour'].map(name => readFileSync(at(`${name}.svg`), 'utf8'))
    expect(black).toContain('lang="en"')
    expect(colour).toContain('lang="de"')
    const coloured = (text = '') =>
      [...text.matchAll(/#([0-9A-F]{6})/gi)].filter(([, it = '']) => !isGrey(it)).length
    expect(coloured(black)).toBe(0)
    expect(coloured(colour)).toBeGreaterThan(0)
  })
})

const isGrey = (colour: string): boolean =>
  colour.slice(0, 2) === colour.slice(2, 4) && colour.slice(2, 4) === colour.slice(4)

describe('a drawing that cannot be', () => {
  const cases: readonly [says: string, args: readonly string[], why: RegExp][] = [
    ['without a place', [], /a file is needed/],
    [
      'in a format that nobody knows',
      ['--to', at('jamb.doc')],
      /“.*jamb\.doc” names no format; there are .*\.svg/,
    ],
    [
      'at a scale that fits no sheet',
      ['--to', at('a.svg'), '--scale', '5:1'],
      /“5:1” is no scale .* it fits at .*1:2/,
    ],
    [
      'with a joint that would not be larger than in the cut',
      ['--to', at('a.svg'), '--scale', '1:2', '--enlarged', '1:2'],
      /--enlarged: the joint does not fit .* at 1:2.*: .*none/,
    ],
    [
      'with the joints of several cuts',
      ['--to', at('a.svg'), '--cut', 'all', '--enlarged', '1:1'],
      /--enlarged: .*one cut/,
    ],
    ['at no scale at all', ['--to', at('a.svg'), '--scale', 'large'], /“large” is no scale/],
    ['without an ending', ['--to', at('jamb')], /names no format/],
    [
      'of an opening that is not there',
      ['--to', at('a.svg'), '--opening', 'W-99'],
      /no opening is called “W-99”; there are/,
    ],
    ['of a side that no opening has', ['--to', at('a.svg'), '--cut', 'roof'], /Allowed choices are/],
    ['into a folder that is not there', ['--to', at('nowhere/a.svg')], /no such file or folder/],
    ['into a folder', ['--to', `${folder}/.svg/`], /names no format|no such/],
  ]
  it.each(cases)('%s', async (_, args, why) => {
    const { code, out, err } = await typed('draw', right, ...args)
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(err).toMatch(why)
  })
})

it('an opening may be named', async () => {
  const [project] = samples.map(it => it.project)
  const id = Object.keys(project?.openings ?? {})[0] ?? ''
  expect(project && openingOf(project, id).id).toBe(id)
  expect((await typed('draw', right, '--to', at('named.svg'), '--opening', id)).code).toBe(0)
})

describe('a sheet that carries its project', () => {
  it.each(['svg', 'pdf'])('as %s is checked like the project itself', async format => {
    const sheet = at(`carries.${format}`)
    expect((await typed('draw', right, '--to', sheet)).code).toBe(0)
    const [ofSheet, ofProject] = [await typed('check', sheet), await typed('check', right)]
    expect(ofSheet.err).toBe('')
    expect(ofSheet.out.replace(`carries.${format}`, 'right-jamb.jamb')).toBe(ofProject.out)
  })

  it('is not changed in its place, but gives a project that is', async () => {
    const sheet = at('carries.svg')
    await typed('draw', right, '--to', sheet)
    const before = readFileSync(sheet)
    const { code, err } = await typed('set', sheet, 'joint.planned', '15')
    expect(code).toBe(2)
    expect(err).toMatch(/not changed in place/)
    expect(readFileSync(sheet).equals(before)).toBe(true)
    expect((await typed('set', sheet, 'joint.planned', '15', '--to', at('taken-out.jamb'))).code).toBe(0)
    expect((await typed('check', at('taken-out.jamb'))).out).toContain('15\u00a0mm planned')
  })
})
