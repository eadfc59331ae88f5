import { frameMaterialName, revealFormName } from '../../../core/kinds'
import type { Row } from '../../../core/practice'
import { writeNumber } from '../../../core/units'
import { same, type Words, words } from '../../../core/words'

/** What a case of a limit depends on, and what a limit gives, by the keys of its row. */
const keyName: Readonly<Record<string, Words>> = {
  frame: words('frame', 'Rahmen'),
  reveal: words('reveal', 'Leibung'),
  length_mm: words('length', 'Länge'),
  width_mm: words('width', 'Breite'),
  depth_mm: words('depth', 'Tiefe'),
  fall_mm: words('fall', 'Absturzhöhe'),
  drain: words('water at the door', 'Wasser an der Tür'),
  fixing: words('fixing', 'Befestigung'),
  base: words('base', 'Untergrund'),
  burglary: words('resists burglary', 'einbruchhemmend'),
  exposure: words('exposure', 'Bewitterung'),
  wall: words('wall', 'Wand'),
  sill: words('sill', 'Fensterbank'),
  by: words('covered by', 'überdeckt durch'),
  of: words('of', 'von'),
  table: words('table', 'Tabelle'),
  rated: words('rated', 'nachgewiesen'),
  room: words('room', 'Raum'),
  air: words('air', 'Luft'),
  movement_pct: words('movement', 'Bewegung'),
  light: words('in the light', 'im Licht'),
  least: words('at least', 'mindestens'),
  least_mm: words('at least', 'mindestens'),
  least_deg: words('at least', 'mindestens'),
  most: words('at most', 'höchstens'),
  most_mm: words('at most', 'höchstens'),
  share: words('share of the width', 'Anteil der Breite'),
  within_mm: words('give or take', 'zulässige Abweichung'),
  mostShare: words('greatest share', 'größter Anteil'),
  'share_pct.min': words('at least', 'mindestens'),
  'share_pct.max': words('at most', 'höchstens'),
  faces: words('faces', 'Flanken'),
  diameters: words('diameters', 'Durchmesser'),
  spacing_mm: words('spacing', 'Abstand'),
  corner_mm: words('from the corner', 'ab Ecke'),
  embedment_mm: words('embedment', 'Verankerung'),
  sill_mm: words('up to sill height', 'bis Brüstungshöhe'),
  movement_mm_m: words('movement', 'Bewegung'),
  fRsi: words('temperature factor', 'Temperaturfaktor'),
  humidity_pct: words('humidity at the surface', 'Feuchte an der Oberfläche'),
  most_kg_m2: words('most water', 'höchstens Wasser'),
}

const valueName: Readonly<Record<string, Words>> = { ...frameMaterialName, ...revealFormName }

/** The name of a key; one that has none speaks for itself. */
export const nameOfKey = (key: string): Words => keyName[key] ?? same(key.replaceAll(/[_.-]/g, ' '))

const unitOfEnd = [
  ['_mm_m', 'mm/m'],
  ['_mm', 'mm'],
  ['_deg', '°'],
  ['_pct', '%'],
  ['_kg_m2', 'kg/m²'],
] as const

/** The unit that the name of a key says: of `share_pct.min` that of its group. */
export const unitOfKey = (key: string): string =>
  unitOfEnd.find(([end]) => (key.split('.')[0] ?? key).endsWith(end))?.[1] ?? ''

const nameOfValue = (value: unknown): Words =>
  valueName[String(value)] ?? same(String(value).replaceAll('-', ' '))

/** When a row holds, in words: nothing where it always does. */
export const caseOf = (row: Row): Words => {
  const parts = Object.entries(row.when).map(([key, asked]) => conditionOf(key, asked))
  return { en: parts.map(it => it.en).join('; '), de: parts.map(it => it.de).join('; ') }
}

const conditionOf = (key: string, asked: unknown): Words => {
  const name = nameOfKey(key)
  if (Array.isArray(asked)) {
    const values = asked.map(nameOfValue)
    return {
      en: `${name.en}: ${values.map(it => it.en).join(', ')}`,
      de: `${name.de}: ${values.map(it => it.de).join(', ')}`,
    }
  }
  // The only other form of a condition is a half-open range.
  const { above, upTo } = asked as { readonly above?: number; readonly upTo?: number }
  const unit = unitOfKey(key)
  const range = (language: 'en' | 'de', over: string, to: string) =>
    [
      above === undefined ? '' : `${over} ${writeNumber(above, language)}`,
      upTo === undefined ? '' : `${to} ${writeNumber(upTo, language)}`,
    ]
      .filter(Boolean)
      .join(' ') + (unit ? ` ${unit}` : '')
  return { en: `${name.en} ${range('en', 'above', 'up to')}`, de: `${name.de} ${range('de', 'über', 'bis')}` }
}

/** A number in what a limit gives, and where it stands. */
export type Leaf = { readonly path: readonly string[]; readonly key: string; readonly value: number }

/** All numbers of what a limit gives. */
export const leavesOf = (then: unknown, path: readonly string[] = []): readonly Leaf[] => {
  if (typeof then === 'number') return [{ path, key: path.join('.'), value: then }]
  if (typeof then !== 'object' || then === null || Array.isArray(then)) return []
  return Object.entries(then).flatMap(([key, value]) => leavesOf(value, [...path, key]))
}

/** What a limit gives that is no number, in words. */
export const wordsOf = (then: unknown): Words => {
  if (typeof then === 'string') return nameOfValue(then)
  if (typeof then !== 'object' || then === null) return same('')
  const parts = Object.entries(then).flatMap(([key, value]) =>
    typeof value === 'number' || (typeof value === 'object' && !Array.isArray(value))
      ? []
      : [{ name: nameOfKey(key), values: (Array.isArray(value) ? value : [value]).map(nameOfValue) }],
  )
  return {
    en: parts.map(it => `${it.name.en}: ${it.values.map(one => one.en).join(', ')}`).join('; '),
    de: parts.map(it => `${it.name.de}: ${it.values.map(one => one.de).join(', ')}`).join('; '),
  }
}

/** What a limit gives with one of its numbers changed. */
export const withLeaf = (then: unknown, [key, ...rest]: readonly string[], to: number): unknown => {
  if (key === undefined) return to
  if (typeof then !== 'object' || then === null) return then
  return Object.fromEntries(
    Object.entries(then).map(([name, value]) => [name, name === key ? withLeaf(value, rest, to) : value]),
  )
}
