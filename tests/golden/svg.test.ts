import { readFileSync, writeFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { svgOf } from '../../core/export'
import { aHatchSheet } from '../given/a-hatch-sheet'
import { aSectionSheet } from '../given/a-section-sheet'

// Look at the pictures before keeping new ones: WRITE_GOLDEN=1 writes them.
it.each([
  ['hatches', aHatchSheet('en', 'colour')],
  ['jamb-timber', aSectionSheet({ language: 'de' })],
  ['jamb-plastic-turned', aSectionSheet({ profile: 'pvc-76', turn_deg: 270, palette: 'black' })],
])('the drawing %s is the one that was kept', (name, drawing) => {
  const path = `tests/golden/${name}.svg`
  const svg = svgOf(drawing)
  if (process.env.WRITE_GOLDEN === '1') writeFileSync(path, svg)
  expect(svg).toBe(readFileSync(path, 'utf8'))
})
