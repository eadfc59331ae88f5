import { expect, test } from 'vitest'
import { material } from '../../core/materials'
import { type SourceId } from '../../core/sources'
import { inSeries, kindOf, sideBySide } from '../../core/seals'
import { specified } from '../../core/units'
import { publishedValue, publishedValues } from './published-value'

type Layer = { by: SourceId; id: string; thickness_mm: number; state?: 'dry' | 'wet' }

/** Equivalent air layer of a material: its vapour factor times its thickness. */
const layer = (says: string, { by, id, thickness_mm, state = 'dry' }: Layer, expected: number) =>
  publishedValue({
    says: `${says}: ${thickness_mm} mm make ${expected} m`,
    by,
    given: { thickness_mm },
    compute: it => ((material(id)?.mu?.[state] ?? 0) * it.thickness_mm) / 1000,
    expected,
    within: 1e-9,
    spoiled: { thickness_mm: thickness_mm * 1.1 },
  })

publishedValues('equivalent air layers of joint materials', [
  layer('silicone', { by: 'en-iso-10456', id: 'silicone', thickness_mm: 8 }, 40),
  layer('polysulphide', { by: 'en-iso-10456', id: 'polysulphide', thickness_mm: 8 }, 80),
  layer('gun foam at its tightest', { by: 'en-iso-10456', id: 'gun-foam', thickness_mm: 70 }, 4.2),
  layer('packed mineral wool', { by: 'mu-lists', id: 'mineral-wool', thickness_mm: 70 }, 0.07),
  layer('gypsum plaster, dry', { by: 'mu-lists', id: 'gypsum-plaster', thickness_mm: 15 }, 0.15),
  layer(
    'gypsum plaster, wet',
    { by: 'en-iso-10456', id: 'gypsum-plaster', thickness_mm: 15, state: 'wet' },
    0.06,
  ),
  layer('bitumen sheet', { by: 'mu-lists', id: 'bitumen-sheet', thickness_mm: 1.5 }, 75),
  layer('rubber sheet at its most open', { by: 'en-iso-10456', id: 'epdm', thickness_mm: 0.8 }, 4.8),
  layer('polyethylene film', { by: 'sd-definitions', id: 'polyethylene-ld', thickness_mm: 0.2 }, 20),
])

publishedValues('resistance of seals', [
  publishedValue({
    says: 'a silicone bead 8 mm deep has 40 m',
    by: 'en-iso-10456',
    given: { depth_mm: 8, mu: 5000 },
    compute: it => {
      const seal = {
        kind: 'sealant',
        id: 'seal-1',
        plane: 'outer',
        depth_mm: specified(it.depth_mm),
        mu: specified(it.mu),
      } as const
      return kindOf(seal).sd_m(seal, 'outer')?.winter.max ?? 0
    },
    expected: 40,
    within: 1e-9,
    spoiled: { mu: 5500 },
  }),
])

const steady = (min: number, max: number) => ({ winter: { min, max }, summer: { min, max } })

test('layers one behind the other add up, at both ends of their ranges (EN ISO 13788)', () => {
  expect(inSeries([steady(10, 55), steady(0.3, 0.3)])).toEqual(steady(10.3, 55.3))
})

test('layers side by side let vapour through by their share of the width', () => {
  const half = (sd_m: number) => ({ share: 0.5, sd_m: { min: sd_m, max: sd_m } })
  const { min, max } = sideBySide([half(1), half(3)])
  expect(min).toBeCloseTo(1.5, 9)
  expect(max).toBeCloseTo(1.5, 9)
  // A gap of a hundredth of the width lets through more than the whole of a tight bead.
  expect(
    sideBySide([
      { share: 0.99, sd_m: { min: 100, max: 100 } },
      { share: 0.01, sd_m: { min: 0.1, max: 0.1 } },
    ]).max,
  ).toBeLessThan(10)
})
