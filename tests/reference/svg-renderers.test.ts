import { describe, expect, it } from 'vitest'
import { svgOf } from '../../core/export'
import { aHatchSheet } from '../given/a-hatch-sheet'
import { aSectionSheet } from '../given/a-section-sheet'
import { shareThatDiffers } from '../given/a-reader-of-png'
import { paintedByChromium, paintedByRsvg } from '../given/a-renderer'

/** Two renderers that know nothing of each other must show the same picture. */
const most = 0.01

describe('an SVG looks alike in Chromium and in librsvg', () => {
  it.each([
    ['a sheet of hatches', aHatchSheet('en', 'colour')],
    ['a section in colour', aSectionSheet({ language: 'de' })],
    [
      'a section of the black set, turned',
      aSectionSheet({ turn_deg: 270, palette: 'black', profile: 'pvc-76' }),
    ],
  ])('%s', async (_, drawing) => {
    const svg = svgOf(drawing)
    const painted = await paintedByChromium(svg, drawing.size_mm)
    const other = paintedByRsvg(svg)
    expect(shareThatDiffers(painted, other)).toBeLessThanOrEqual(most)
    // Lines that start 0.4 mm aside must not pass.
    const spoiled = svg.replace(/ d="M[^"]*"/g, it =>
      it.replace(/M([\d.]+)/g, (_, x: string) => `M${Number(x) + 0.4}`),
    )
    expect(shareThatDiffers(painted, paintedByRsvg(spoiled))).toBeGreaterThan(most)
  })
})
