import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Unit, readBand, readQuantity } from '../../../core/units'

/** A typed text as the name of its case. */
const briefly = (typed: string) => JSON.stringify(typed).slice(0, 40)

const wanted = { unit: 'mm', allowed: { unit: 'mm', min: 0, max: 6000 }, at: 'width' } as const
const millimetres = (text: string, unit: Unit = 'mm') => {
  const read = readQuantity(text, { unit })
  return read.ok ? read.value : read.problems[0].say.en
}
const value = (text: string, unit?: Unit) => {
  const read = millimetres(text, unit)
  return typeof read === 'string' ? read : read.value
}

describe('numbers are read with both decimal marks, whatever the language', () => {
  const cases: readonly [typed: string, mm: number][] = [
    ['12', 12],
    ['12,5', 12.5],
    ['12.5', 12.5],
    [',5', 0.5],
    ['12.', 12],
    ['-3', -3],
    ['−3', -3],
    ['+3', 3],
    ['1 200', 1200],
    ['1\u202f200,5', 1200.5],
    ['1\u00a0234\u00a0567', 1234567],
    ['0.125', 0.125],
    ['1250.125', 1250.125],
  ]
  it.each(cases)('%s', (typed, mm) => {
    expect(value(typed)).toBeCloseTo(mm, 9)
    expect(millimetres(typed)).not.toHaveProperty('asks')
  })

  it.each(['1.200', '12,500', '999.999', '2*1.200'])('%s may be thousands and asks', typed => {
    const read = millimetres(typed)
    expect(read).toHaveProperty('asks')
    expect(value(typed)).toBeLessThan(1000)
  })

  it('the question names what was understood, in both languages', () => {
    expect(millimetres('1.200')).toMatchObject({
      value: 1.2,
      asks: { en: '1.2\u00a0mm?', de: '1,2\u00a0mm?' },
    })
  })

  it('metres with three decimals are meant as they stand', () => {
    expect(millimetres('1,185 m')).not.toHaveProperty('asks')
  })
})

describe('sums are worked out', () => {
  const cases: readonly [typed: string, mm: number][] = [
    ['1200+2*15', 1230],
    ['1200 + 2 × 15', 1230],
    ['(1200-1176)/2', 12],
    ['100/4/5', 5],
    ['100-4-5', 91],
    ['2*(3+(4-1))*-1', -12],
    ['2--3', 5],
    ['1 200/2', 600],
    ['7/16', 0.4375],
    ['1,18 m + 20', 1200],
    ['1 m / 3', 1000 / 3],
    ['1/2 m', 500],
    ['1 m / 25 cm', 4],
    ['2 * 4in', 203.2],
  ]
  it.each(cases)('%s = %d', (typed, mm) => expect(value(typed)).toBeCloseTo(mm, 9))
})

describe('units of length, the inch being 25.4 mm', () => {
  const cases: readonly [typed: string, mm: number][] = [
    ['4in', 101.6],
    ['4 IN', 101.6],
    ['4"', 101.6],
    ['46 7/16 in', 1179.5125],
    ['46 7/16"', 1179.5125],
    ['7/16 in', 11.1125],
    [`5' 2 1/2"`, 1587.5],
    ["5'", 1524],
    ["5' 2", 1574.8],
    [`-5' 2"`, -1574.8],
    ['5 ft 2 in', 1574.8],
    ['1,18 m', 1180],
    ['118cm', 1180],
    ['1180 mm', 1180],
  ]
  it.each(cases)('%s', (typed, mm) => expect(value(typed)).toBeCloseTo(mm, 9))

  it('a field in metres reads a number without a unit as metres', () => {
    expect(value('12', 'm')).toBe(12)
    expect(value('12 cm', 'm')).toBeCloseTo(0.12, 9)
  })

  const others: readonly [typed: string, unit: Unit, value: number][] = [
    ['-5 °C', 'C', -5],
    ['-5C', 'C', -5],
    ['25 %', 'pct', 25],
    ['0,035 W/(m·K)', 'W_mK', 0.035],
    ['0.035 W/mK', 'W_mK', 0.035],
    ['1,6 mm/m', 'mm_m', 1.6],
    ['3°', 'deg', 3],
    ['1/2 mm/m', 'mm_m', 0.5],
  ]
  it.each(others)('%s', (typed, unit, is) => expect(value(typed, unit)).toBeCloseTo(is, 9))
})

describe('what was understood is said where it differs from what was typed', () => {
  const cases: readonly [typed: string, differs: boolean, de: string][] = [
    ['12,5', false, '12,5 mm'],
    ['12.5 mm', false, '12,5 mm'],
    ['1200+30', true, '1230 mm'],
    ['4in', true, '101,6 mm'],
    ['1 200', true, '1200 mm'],
  ]
  it.each(cases)('%s', (typed, differs, de) => {
    const read = millimetres(typed)
    expect(read).toMatchObject({ differs, understood: { de: de.replace(' ', '\u00a0') } })
  })
})

describe('what cannot be read is refused, with the allowed range', () => {
  const cases: readonly [typed: string, why: RegExp][] = [
    ['', /nothing is typed/],
    ['   ', /nothing is typed/],
    ['=', /“=” is not understood/],
    ['12=', /“=” is not understood/],
    ['twelve', /“twelve” is not understood/],
    ['12 furlongs', /“furlongs” is not understood/],
    ['1e3', /“e3” is not understood/],
    ['1 2', /not complete/],
    ['1+', /not complete/],
    ['*2', /not complete/],
    ['(1+2', /bracket/],
    ['1+2)', /not complete/],
    ['1/0', /zero/],
    ['1/(2-2)', /zero/],
    ['1/0 in', /zero/],
    ['1.234.567', /more than one decimal mark/],
    ['1.234,5', /more than one decimal mark/],
    ['2 m * 3 m', /length times a length/],
    ['2.5 / 3 m', /divided by a length/],
    ["5' 14", /inches below 12/],
    ["1'200", /inches below 12/],
    ['10..15', /one value/],
    ['10 to 15', /one value/],
    ['12 ±3', /one value/],
    ['9'.repeat(190), /too large/],
    ['9'.repeat(10_000), /longer than 200/],
    ['('.repeat(10_000), /longer than 200/],
    ['('.repeat(150), /not complete/],
    ['<b>12</b>', /not understood/],
    ['7000', /7000\u00a0mm is outside.*0–6000\u00a0mm/],
    ['-1', /−1\u00a0mm is outside/],
    ['2 furlongs; drop', /not understood/],
    ['١٢', /not understood/],
    ['\u0000', /not understood/],
  ]
  it.each(cases.map(it => [briefly(it[0]), ...it] as const))('%s', (_, typed, why) => {
    const read = readQuantity(typed, wanted)
    expect(read.ok).toBe(false)
    if (read.ok) return
    expect(read.problems[0].say.en).toMatch(why)
    expect(read.problems[0]).toMatchObject({ at: 'width', allowed: wanted.allowed })
    expect(read.problems[0].say.de).not.toBe('')
    expect(read.problems[0].say.en.length).toBeLessThan(120)
  })

  it('no text whatever throws, and what is read is finite and allowed', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(...'0123456789.,+-*/() min"\'±…to') })),
        typed => {
          const one = readQuantity(typed, wanted)
          if (one.ok) expect(0 <= one.value.value + 1e-6 && one.value.value - 1e-6 <= 6000).toBe(true)
          const band = readBand(typed, wanted)
          if (band.ok) expect(band.value.value.min <= band.value.value.max).toBe(true)
        },
      ),
      { numRuns: 5000 },
    )
  })
})

describe('a joint is typed as a range', () => {
  const band = (text: string) => {
    const read = readBand(text, wanted)
    return read.ok ? [read.value.value.min, read.value.value.max] : read.problems[0].say.en
  }
  const cases: readonly [typed: string, min: number, max: number][] = [
    ['10..15', 10, 15],
    ['10...15', 10, 15],
    ['10…15', 10, 15],
    ['10-15', 10, 15],
    ['10 – 15 mm', 10, 15],
    ['10 to 15', 10, 15],
    ['10 bis 15', 10, 15],
    ['10bis15', 10, 15],
    ['10,5-15.5', 10.5, 15.5],
    ['12 -2/+3', 10, 15],
    ['12 +3/-2', 10, 15],
    ['12 +3 / −2 mm', 10, 15],
    ['12 ±3', 9, 15],
    ['12±3', 9, 15],
    ['12 +-3', 9, 15],
    ['12 +/- 3', 9, 15],
    ['12', 12, 12],
    ['10+2', 12, 12],
    ['1..1,5 cm', 10, 15],
    ['1 cm..15 mm', 10, 15],
    ['1 cm ± 0.2', 8, 12],
    ['3/8 in to 5/8 in', 9.525, 15.875],
    ['(20-10)..(10+5)', 10, 15],
    ['2*5..30/2', 10, 15],
    ['0-5', 0, 5],
  ]
  it.each(cases)('%s', (typed, min, max) => {
    const read = band(typed)
    expect(typeof read === 'string' ? read : read.map(it => Number(it.toFixed(9)))).toEqual([min, max])
  })

  it('ends the wrong way round are swapped, with a note', () => {
    const read = readBand('15..10', wanted)
    expect(read).toMatchObject({ ok: true, value: { value: { min: 10, max: 15 }, differs: true } })
    expect(read.ok && read.value.notes.map(it => it.en)).toEqual([
      'the ends were the wrong way round and are swapped',
    ])
    expect(readBand('10..15', wanted)).toMatchObject({ value: { notes: [], differs: false } })
  })

  it('three decimals ask in a range as well', () => {
    expect(readBand('1.200..1.300', wanted)).toHaveProperty('value.asks')
  })

  it('every end that is not allowed is named', () => {
    const read = readBand('-5..7000', wanted)
    expect(read.ok ? [] : read.problems.map(it => it.say.en.split(' is ')[0])).toEqual([
      '−5\u00a0mm',
      '7000\u00a0mm',
    ])
  })

  it.each(
    [
      '10..',
      '..15',
      '10..15..20',
      '12 ±',
      '±3',
      '12 -2/-3',
      '12 ±-3',
      'wide',
      '1/0..3',
      '9'.repeat(10_000),
    ].map(it => [briefly(it), it] as const),
  )('%s is refused', (_, typed) => expect(readBand(typed, wanted).ok).toBe(false))
})
