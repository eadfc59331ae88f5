import type { Point } from '../../geometry'
import type { Along } from '../../vapour'
import { type Language, words } from '../../words'
import type { Place } from '../heat/scale-marks'
import type { ViewMark } from '../mark'
import { line, text } from '../sheet/marks'
import { heights, textWidth_mm } from '../text/lettering'
import { axisMarks, axisTo } from './axis'

/**
 * Pressures along a path against the resistance to vapour, outside at the left: saturation, what is there in winter, and
 * the faces where water gathers (Glaser 1959).
 */
export const profileChart = ({ winter }: Along, place: Place, language: Language): readonly ViewMark[] => {
  const { faces } = winter.profile
  const whole_m = faces.at(-1)?.sd_m ?? 0
  const axis = axisTo(Math.max(...faces.map(it => it.saturation_Pa)), place)
  const { x0, x1, y0, y1, py } = axis
  const px = (sd_m: number): number => x0 + (whole_m > 0 ? sd_m / whole_m : 0) * (x1 - x0)
  const curve = (of: (i: number) => number): readonly Point[] =>
    faces.map((face, i): Point => [px(face.sd_m), py(of(i))])
  const saturation = curve(i => faces[i]?.saturation_Pa ?? 0)
  const there = curve(i => winter.taut_Pa[i] ?? 0)
  const wet = faces.flatMap((face, i) => ((winter.gathers_kg_m2s[i] ?? 0) > 0 ? [px(face.sd_m)] : []))
  return [
    ...axisMarks(axis, pascal, language),
    ...faces.map(face => line('faint', [px(face.sd_m), y0], [px(face.sd_m), y1])),
    ...wet.map(x => line('isotherm-named', [x, y0], [x, y1])),
    { kind: 'path', layer: 'isotherms', pen: 'stroke', points: saturation, closed: false },
    { kind: 'path', layer: 'isotherms', pen: 'curve', points: there, closed: false },
    ...legend(place, [
      ['stroke', names.saturation[language]],
      ['curve', names.there[language]],
      ...(wet.length > 0 ? ([['isotherm-named', names.wet[language]]] as const) : []),
    ]),
    text(names.across[language], [x1, y0 - heights.note_mm - 2.4], { anchor: 'end', faint: true }),
  ]
}

type Line = readonly [pen: 'stroke' | 'curve' | 'isotherm-named', says: string]

/** Short lines with their names, from the left below the chart. */
const legend = ({ at }: Place, all: readonly Line[]): readonly ViewMark[] => {
  let x = at[0]
  return all.flatMap(([pen, says]) => {
    const from = x
    x += 14 + textWidth_mm(says, heights.note_mm) + 5
    const y = at[1] + heights.note_mm / 2 + 0.6
    return [line(pen, [from, y], [from + 12, y]), text(says, [from + 14, at[1] + 0.6])]
  })
}

const pascal = 'Pa'
const names = {
  saturation: words('saturation', 'Sättigung'),
  there: words('vapour pressure', 'Dampfdruck'),
  wet: words('water gathers', 'Tauwasser'),
  across: words('outside – resistance to vapour – inside', 'außen – Dampfwiderstand – innen'),
} as const
