import { describe, expect, test } from 'vitest'
import {
  dewPoint_C,
  humidity_pct,
  saturation_Pa,
  surfaceFactor,
  surfaceLimit_C,
  surfaceOf_C,
  vapour_Pa,
} from '../../core/air'
import { publishedValue, publishedValues } from './published-value'

const norm = { inside_C: 20, outside_C: -5 }

publishedValues('moist air', [
  publishedValue({
    says: 'saturation at 20 °C is 2336.95 Pa',
    by: 'en-iso-13788',
    given: { at_C: 20 },
    compute: it => saturation_Pa(it.at_C),
    expected: 2336.95,
    within: 0.005,
    spoiled: { at_C: 20.1 },
  }),
  publishedValue({
    says: 'saturation over ice at −5 °C is 401.18 Pa',
    by: 'en-iso-13788',
    given: { at_C: -5 },
    compute: it => saturation_Pa(it.at_C),
    expected: 401.18,
    within: 0.005,
    spoiled: { at_C: -5.1 },
  }),
  publishedValue({
    says: 'air of 20 °C and 50 % has its dew point at 9.27 °C',
    by: 'din-4108-3',
    given: { pct: 50 },
    compute: it => dewPoint_C(vapour_Pa(20, it.pct)),
    expected: 9.269,
    within: 0.0005,
    spoiled: { pct: 51 },
  }),
  publishedValue({
    says: 'it reaches 80 % on a surface of 12.62 °C',
    by: 'en-iso-13788',
    given: { pct: 50 },
    compute: it => surfaceLimit_C(vapour_Pa(20, it.pct), 80),
    expected: 12.625,
    within: 0.0005,
    spoiled: { pct: 50.1 },
  }),
  publishedValue({
    says: 'fRsi of that surface between 20 and −5 °C is 0.705',
    by: 'din-4108-2',
    given: { pct: 50 },
    compute: it => surfaceFactor(surfaceLimit_C(vapour_Pa(20, it.pct), 80), norm),
    expected: 0.705,
    within: 0.0005,
    spoiled: { pct: 51 },
  }),
  publishedValue({
    says: 'fRsi of 0.70 between 20 and −5 °C is a surface of 12.5 °C',
    by: 'din-4108-2',
    given: { fRsi: 0.7 },
    compute: it => surfaceOf_C(it.fRsi, norm),
    expected: 12.5,
    within: 1e-9,
    spoiled: { fRsi: 0.705 },
  }),
])

describe('laws of moist air', () => {
  test('the dew point of saturation is the temperature, over ice and over water', () => {
    for (let at_C = -40; at_C <= 60; at_C += 0.5) expect(dewPoint_C(saturation_Pa(at_C))).toBeCloseTo(at_C, 9)
  })

  test('the surface of 12.5 °C and the line of 80 % are two things', () => {
    const air_Pa = vapour_Pa(20, 50)
    expect(humidity_pct(12.5, air_Pa)).toBeGreaterThan(80.6)
    expect(humidity_pct(surfaceLimit_C(air_Pa, 80), air_Pa)).toBeCloseTo(80, 9)
  })
})
