import type { PlainResult, SectionHeat } from '../../../core/heat'
import { type Language, type Words, words } from '../../../core/words'

/** The heat of a cut: flows, Psi, coldest places, and how well it is solved. The sum of Psi stands in a table of its own. */
export const heatText = (it: SectionHeat, language: Language): string => {
  const say = (text: Words) => text[language]
  const n = numbers(language)
  const psi = it.psi
  return lines([
    [say(labels.inside), `${n(it.flow_W_m.inside, 4)} W/m`],
    [say(labels.outside), `${n(it.flow_W_m.outside, 4)} W/m`],
    ...(it.flow_W_m.ground === 0 ? [] : [[say(labels.ground), `${n(it.flow_W_m.ground, 4)} W/m`]]),
    ...(it.coupling_W_mK === undefined ? [] : [['L2D', `${n(it.coupling_W_mK, 5)} W/(m·K)`]]),
    ...(psi ? [['Psi', `${n(psi.psi_W_mK, 5)} W/(m·K)`]] : []),
    ...it.lowest.map(spot => [
      `${say(labels.lowest)} ${say(surfaces[spot.of])}`,
      `${n(spot.temperature_C, 2)} °C, fRsi ${n(spot.fRsi, 3)}, (${n(spot.at_mm[0], 1)} | ${n(spot.at_mm[1], 1)}) mm`,
    ]),
    [say(labels.unknowns), String(it.unknowns)],
    [
      say(labels.error),
      errorText(
        Number.isFinite(it.errorEstimate_percent) ? it.errorEstimate_percent : null,
        it.errorKind,
        language,
      ),
    ],
    [say(labels.passed), it.passed.join(', ')],
  ])
}

/** The result of a plain section in words. */
export const plainText = (it: PlainResult, language: Language): string => {
  const n = numbers(language)
  return lines([
    ...Object.entries(it.heatFlow_W_m).map(([name, flow]) => [name, `${n(flow, 5)} W/m`]),
    ...Object.entries(it.probes_C).map(([name, value]) => [name, value === null ? '–' : `${n(value, 3)} °C`]),
    ...Object.entries(it.lowestSurface_C).map(([name, spot]) => [
      `${labels.lowest[language]} ${name}`,
      `${n(spot.temperature_C, 3)} °C, (${n(spot.at_mm[0], 1)} | ${n(spot.at_mm[1], 1)}) mm`,
    ]),
    [labels.unknowns[language], String(it.unknowns)],
    [labels.error[language], errorText(it.errorEstimate_percent, it.errorKind, language)],
  ])
}

const errorText = (percent: number | null, kind: PlainResult['errorKind'], language: Language): string =>
  percent === null
    ? labels.unsettled[language]
    : `${numbers(language)(percent, 3)} %, ${kinds[kind][language]}`

const numbers =
  (language: Language) =>
  (value: number, digits: number): string =>
    language === 'de' ? value.toFixed(digits).replace('.', ',') : value.toFixed(digits)

const lines = (rows: readonly (readonly string[])[]): string => {
  const width = Math.max(...rows.map(row => row[0]?.length ?? 0))
  return rows.map(([name = '', value = '']) => `${name.padEnd(width)}  ${value}\n`).join('')
}

const labels = {
  inside: words('from inside', 'von innen'),
  outside: words('from outside', 'von außen'),
  ground: words('from the ground', 'aus dem Erdreich'),
  wall: words('wall', 'Wand'),
  element: words('window', 'Fenster'),
  lowest: words('lowest,', 'niedrigste,'),
  unknowns: words('unknowns', 'Unbekannte'),
  error: words('estimated error', 'geschätzter Fehler'),
  unsettled: words('none: the flow is not settled by any mesh', 'keiner: kein Netz legt den Strom fest'),
  passed: words('cases passed', 'bestandene Fälle'),
} as const

const kinds: Readonly<Record<PlainResult['errorKind'], Words>> = {
  'one-sided': words('one-sided: the true flow is smaller', 'einseitig: der wahre Strom ist kleiner'),
  'two-sided': words('two-sided', 'zweiseitig'),
}

const surfaces: Readonly<Record<SectionHeat['lowest'][number]['of'], Words>> = {
  wall: words('wall', 'Wand'),
  reveal: words('reveal', 'Leibung'),
  frame: words('frame', 'Rahmen'),
  glass: words('glass', 'Glas'),
  sill: words('sill', 'Fensterbank'),
  floor: words('floor', 'Fußboden'),
}
