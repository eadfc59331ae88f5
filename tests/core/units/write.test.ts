import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type Bounds,
  type Unit,
  isInside,
  readBand,
  readQuantity,
  units,
  writeBand,
  writeBounds,
  writeCompared,
  writeNumber,
  writeQuantity,
} from '../../../core/units'
import { type Language, languages } from '../../../core/words'

const nb = '\u00a0'
const plain = (text: string) => text.replaceAll(nb, ' ')

describe('a number is written by language', () => {
  const cases: readonly [value: number, decimals: number | undefined, en: string, de: string][] = [
    [12.5, undefined, '12.5', '12,5'],
    [12, undefined, '12', '12'],
    [1200, undefined, '1200', '1200'],
    [12.5, 0, '13', '13'],
    [12, 1, '12.0', '12,0'],
    [-3.25, undefined, '−3.25', '−3,25'],
    [-0.04, 1, '0.0', '0,0'],
    [0.1 + 0.2, undefined, '0.3', '0,3'],
    [1e-9, undefined, '0', '0'],
    [2 ** 80, undefined, '1208925819614629174706176', '1208925819614629174706176'],
    [Infinity, 1, '∞', '∞'],
  ]
  it.each(cases)('%d with %s decimals', (value, decimals, en, de) => {
    expect(writeNumber(value, 'en', decimals)).toBe(en)
    expect(writeNumber(value, 'de', decimals)).toBe(de)
  })

  it('what is no number at all is a fault of ours', () => {
    expect(() => writeNumber(NaN, 'en')).toThrow('NaN')
  })
})

describe('quantities, bands and bounds', () => {
  it('a unit follows after a space that does not break', () => {
    expect(writeQuantity(12.5, 'mm', 'de')).toBe(`12,5${nb}mm`)
    expect(writeQuantity(3, 'deg', 'en')).toBe('3°')
    expect(writeQuantity(20, 'C', 'en')).toBe(`20${nb}°C`)
    expect(writeQuantity(0.75, 'one', 'de')).toBe('0,75')
  })

  it('a band is one span, and one value where both ends look alike', () => {
    expect(plain(writeBand({ min: 10, max: 15 }, 'mm', 'en'))).toBe('10–15 mm')
    expect(plain(writeBand({ min: 11.96, max: 12.04 }, 'mm', 'de', 1))).toBe('12,0 mm')
    expect(plain(writeBand({ min: -2, max: 3 }, 'mm', 'en'))).toBe('−2 to 3 mm')
    expect(plain(writeBand({ min: -2, max: 3 }, 'mm', 'de'))).toBe('−2 bis 3 mm')
  })

  const bounds: readonly [Bounds, en: string, de: string][] = [
    [{ unit: 'mm', min: 10 }, '≥ 10 mm', '≥ 10 mm'],
    [{ unit: 'mm', max: 15.5 }, '≤ 15.5 mm', '≤ 15,5 mm'],
    [{ unit: 'mm', min: 6, max: 15 }, '6–15 mm', '6–15 mm'],
    [{ unit: 'mm' }, 'any', 'beliebig'],
  ]
  it.each(bounds)('%o', (it, en, de) => {
    expect(plain(writeBounds(it, 'en'))).toBe(en)
    expect(plain(writeBounds(it, 'de'))).toBe(de)
  })
})

describe('rounding never turns a verdict round', () => {
  const said = (actual: number, required: Bounds) => {
    const it = writeCompared({ min: actual, max: actual }, required, 'en')
    return [it.actual, it.required, it.margin].map(text => text && plain(text))
  }

  it('a limit that is missed by little is written finely enough to see it', () => {
    expect(said(9.98, { unit: 'mm', min: 10 })).toEqual(['9.98 mm', '≥ 10.00 mm', '−0.02 mm'])
    expect(said(9.5, { unit: 'mm', min: 10 })).toEqual(['9.5 mm', '≥ 10.0 mm', '−0.5 mm'])
    expect(said(15.00004, { unit: 'mm', max: 15 })).toEqual(['15.00004 mm', '≤ 15.00000 mm', '−0.00004 mm'])
  })

  it('a limit that is just met has a margin of nothing', () => {
    expect(said(10, { unit: 'mm', min: 10 })).toEqual(['10 mm', '≥ 10 mm', '0 mm'])
    expect(said(10 - 1e-9, { unit: 'mm', min: 10 })).toEqual(['10 mm', '≥ 10 mm', '0 mm'])
  })

  it('nothing asked for leaves no margin to write', () => {
    expect(said(10, { unit: 'mm' })).toEqual(['10 mm', 'any', undefined])
  })

  const near = fc.tuple(
    fc.double({ min: -50, max: 50, noNaN: true }),
    fc.double({ min: -0.1, max: 0.1, noNaN: true }),
  )
  it('read off the written numbers, every comparison comes out as it is', () => {
    fc.assert(
      fc.property(near, fc.constantFrom('min', 'max'), fc.constantFrom(...units), (numbers, end, unit) => {
        const [limit, off] = numbers
        const required = { unit, [end]: limit }
        const actual = { min: limit + off, max: limit + off }
        const isMet = isInside(actual, required)
        const { margin, actual: shown, required: asked } = writeCompared(actual, required, 'de')
        const asWritten = end === 'min' ? valueIn(asked) <= valueIn(shown) : valueIn(shown) <= valueIn(asked)
        expect(asWritten).toBe(isMet)
        expect(margin?.startsWith('−')).toBe(!isMet)
      }),
      { numRuns: 2000 },
    )
  })
})

const valueIn = (text: string): number =>
  Number((/−?[\d,]+/.exec(text)?.[0] ?? 'nothing written').replace('−', '-').replace(',', '.'))

describe('what is written is read as the same', () => {
  const value = fc.integer({ min: -900_000_000, max: 900_000_000 }).map(n => n / 1e4)
  const anyUnit = fc.constantFrom<Unit>(...units)
  const anyLanguage = fc.constantFrom<Language>(...languages)

  it('quantities of every unit in every language', () => {
    fc.assert(
      fc.property(value, anyUnit, anyLanguage, (number, unit, language) => {
        const read = readQuantity(writeQuantity(number, unit, language), { unit })
        expect(read).toMatchObject({ ok: true })
        expect(read.ok && Math.abs(read.value.value - number)).toBeLessThan(1e-6)
      }),
      { numRuns: 2000 },
    )
  })

  it('bands of every unit in every language', () => {
    fc.assert(
      fc.property(value, value, anyUnit, anyLanguage, (a, b, unit, language) => {
        const band = { min: Math.min(a, b), max: Math.max(a, b) }
        const read = readBand(writeBand(band, unit, language), { unit })
        expect(read).toMatchObject({ ok: true })
        expect(read.ok && Math.abs(read.value.value.min - band.min)).toBeLessThan(1e-6)
        expect(read.ok && Math.abs(read.value.value.max - band.max)).toBeLessThan(1e-6)
      }),
      { numRuns: 2000 },
    )
  })
})
