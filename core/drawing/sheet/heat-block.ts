import { film_W_m2K, type Purpose } from '../../heat'
import { writeNumber } from '../../units'
import { filled, type Language, words } from '../../words'
import { scaleMarks } from '../heat/scale-marks'
import type { HeatPicture } from '../heat/picture'
import { profileMarks } from '../heat/profile-marks'
import type { Mark } from '../mark'
import { heights, linesOf } from '../text/lettering'
import { notePitch_mm } from './legend'
import { text } from './marks'
import type { Place } from './room'

/** From this width on scale and chart stand side by side. Ours. */
const sideBySide_mm = 110
const rows_mm = { title: 5, scale: 17, chart: 34 } as const
const gap_mm = 8

/** How high scale, chart and conditions of a field are at a width. */
export const heatBlockHeight_mm = (width_mm: number): number =>
  width_mm >= sideBySide_mm
    ? rows_mm.title + rows_mm.chart
    : 2 * rows_mm.title + rows_mm.scale + rows_mm.chart + conditionLines * notePitch_mm

/** So many lines of conditions find room below the scale. */
const conditionLines = 5

/** Scale, conditions and the temperature along the inside, from an upper left corner. */
export const heatBlock = (
  it: HeatPicture,
  { at: [x, top], width_mm }: Place,
  language: Language,
): readonly Mark[] => {
  const isWide = width_mm >= sideBySide_mm
  const left_mm = isWide ? Math.min(72, width_mm * 0.4) : width_mm
  const chart_mm = isWide ? width_mm - left_mm - gap_mm : width_mm
  const conditions = conditionsOf(it, language)
    .flatMap(line => linesOf(line, left_mm, heights.note_mm))
    .slice(0, conditionLines)
  const belowScale = top - rows_mm.title - rows_mm.scale - heights.note_mm - 1.4
  const chartTop = isWide ? top : belowScale - conditionLines * notePitch_mm
  const chartX = isWide ? x + left_mm + gap_mm : x
  return [
    text(titles.scale[language], [x, top - heights.note_mm], { bold: true }),
    ...scaleMarks(
      it,
      { at: [x, top - rows_mm.title - rows_mm.scale], size: [left_mm, rows_mm.scale] },
      language,
    ),
    ...conditions.map((line, i) => text(line, [x, belowScale - i * notePitch_mm])),
    text(titles.surface[language], [chartX, chartTop - heights.note_mm], { bold: true }),
    ...profileMarks(
      it,
      { at: [chartX, chartTop - rows_mm.title - rows_mm.chart], size: [chart_mm, rows_mm.chart] },
      language,
    ),
  ]
}

const titles = {
  scale: words('Temperature, °C, 1 K a band', 'Temperatur, °C, 1 K je Stufe'),
  surface: words('Along the inner surface, °C', 'Entlang der inneren Oberfläche, °C'),
}

/** The surface resistances that were used, as they follow from the purpose. */
const filmWords = (purpose: Purpose, language: Language): string => {
  const resistance = (to: 'inside' | 'outside', of: 'wall' | 'frame', isReduced = false): string =>
    writeNumber(Number((1 / film_W_m2K({ to, of }, purpose, isReduced)).toFixed(2)), language, 2)
  const [wall, frame, recess] = [
    resistance('inside', 'wall'),
    resistance('inside', 'frame'),
    resistance('inside', 'frame', true),
  ]
  const more = [
    ...(frame === wall ? [] : [filled(words(', frame and glass {0}', ', Rahmen und Glas {0}'), frame)]),
    ...(recess === frame ? [] : [filled(words(', in recesses {0}', ', in Nischen {0}'), recess)]),
  ].map(it => it[language])
  return `Rsi ${wall}${more.join('')}; Rse ${resistance('outside', 'wall')} m²K/W`
}

const conditionsOf = (it: HeatPicture, language: Language): readonly string[] => {
  const { inside, outside } = it.air
  const degrees = (value_C: number) => writeNumber(Number(value_C.toFixed(1)), language, 1)
  const { coldest } = it
  return [
    filled(
      words('Outside {0} °C, {1} %; inside {2} °C, {3} %', 'Außen {0} °C, {1} %; innen {2} °C, {3} %'),
      degrees(outside.temperature_C),
      writeNumber(Math.round(outside.humidity_pct), language),
      degrees(inside.temperature_C),
      writeNumber(Math.round(inside.humidity_pct), language),
    )[language],
    filmWords(it.purpose, language),
    ...(coldest
      ? [
          filled(
            words(
              'Coldest place of the reveal {0} °C, fRsi {1}',
              'Kälteste Stelle der Leibung {0} °C, fRsi {1}',
            ),
            degrees(coldest.temperature_C),
            writeNumber(Number(coldest.fRsi.toFixed(2)), language, 2),
          )[language],
        ]
      : []),
  ]
}
