import { expect, test } from 'vitest'
import { material, materials } from '../../../core/materials'
import { sourceIds } from '../../../core/sources'

// The hatches of the drawing style; a material drawn with any other would be left white.
const hatches = [
  'masonry_dense', 'masonry_light', 'aac', 'concrete', 'concrete_rc', 'screed', 'plaster', 'insul_soft',
  'insul_rigid', 'insul_woodfibre', 'foam_joint', 'timber_cross', 'timber_long', 'wood_panel', 'steel', 'aluminium',
  'plastic', 'gasket', 'sealant', 'tape_comp', 'foam_cells', 'glass', 'air_cavity', 'soil', 'fill_gravel', 'stone', 'existing',
] // prettier-ignore

test.each(materials)('$id lies within what building materials do', it => {
  expect(it.lambda_W_mK).toBeGreaterThanOrEqual(0.01)
  expect(it.lambda_W_mK).toBeLessThanOrEqual(400)
  expect(it.emissivity).toBeGreaterThan(0)
  expect(it.emissivity).toBeLessThanOrEqual(1)
  for (const factor of [it.mu?.dry ?? 1, it.mu?.wet ?? 1]) expect(factor).toBeGreaterThanOrEqual(1)
  expect(it.mu?.dry ?? 1, 'dry is never more open than wet').toBeGreaterThanOrEqual(it.mu?.wet ?? 1)
})

test.each(materials)('$id can be drawn, named and traced to a source', it => {
  expect(hatches).toContain(it.hatch)
  expect(sourceIds).toContain(it.cite.source)
  expect(it.name.en).not.toBe('')
  expect(it.name.de).not.toBe('')
})

test('every material is listed once and found by its name', () => {
  expect(new Set(materials.map(it => it.id)).size).toBe(materials.length)
  for (const it of materials) expect(material(it.id)).toBe(it)
  expect(material('moonstone')).toBeUndefined()
})
