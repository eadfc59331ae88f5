import { readFileSync, writeFileSync } from 'node:fs'
import { create } from 'fontkit'
import { describe, expect, it } from 'vitest'
import { fontSize_mm, linesOf, textWidth_mm } from '../../../core/drawing'
import { advancesSource } from './advances-source'

const regular = readFileSync('assets/fonts/RobotoCondensed-Regular.ttf')
const bold = readFileSync('assets/fonts/RobotoCondensed-Bold.ttf')
const table = 'core/drawing/text/advances.ts'

describe('the metrics table', () => {
  it('is the one of the committed fonts', () => {
    const source = advancesSource(regular, bold)
    if (process.env.WRITE_ADVANCES === '1') writeFileSync(table, source)
    expect(readFileSync(table, 'utf8')).toBe(source)
  })

  it('holds every letter that the words of a joint need', () => {
    const needed = 'ÄÖÜäöüßØ≤≥λψθΩ²³°±×−–…·≈„“”’µ½√'
    for (const letter of needed) expect(textWidth_mm(letter, 2.5), letter).toBeLessThan(3.5)
  })
})

describe('the width of words', () => {
  it.each([
    ['Vapour-tight AV To LT', regular, false],
    ['Fensterleibung 12,5 ±3', bold, true],
  ] as const)('of "%s" is what a font engine gives without kerning', (words, bytes, isBold) => {
    const font = create(bytes)
    const run = font.layout(words, { kern: false, liga: false, clig: false })
    expect(textWidth_mm(words, 2.5, isBold)).toBeCloseTo((run.advanceWidth / 2048) * fontSize_mm(2.5), 3)
  })

  it('never exceeds the line that words are broken into', () => {
    const words = 'Dämmung der Leibung mit Holzfaserdämmplatten und Donaudampfschifffahrtsgesellschaft'
    const lines = linesOf(words, 20, 2.5)
    expect(lines.length).toBeGreaterThan(4)
    for (const line of lines) expect(textWidth_mm(line, 2.5)).toBeLessThanOrEqual(20)
    expect(lines.join('').replace(/ /g, '')).toBe(words.replace(/ /g, ''))
  })
})
