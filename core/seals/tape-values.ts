import { words } from '../words'
import { type Choice, mostDepth_mm, type SealChoice, type SealValue } from './seal-kind'

/** What every precompressed tape states: the joint range printed on it, and its width, which is its depth in the joint. */
export const tapeLeast: SealValue = {
  id: 'tape.least',
  key: 'least_mm',
  name: words('Tape from joint', 'Band ab Fuge'),
  unit: 'mm',
  bounds: { unit: 'mm', min: 1, max: 60 },
  because: words('the printed range of the tape', 'aufgedruckter Einsatzbereich des Bands'),
}
export const tapeMost: SealValue = {
  ...tapeLeast,
  id: 'tape.most',
  key: 'most_mm',
  name: words('Tape to joint', 'Band bis Fuge'),
}
export const tapeWidth: SealValue = {
  id: 'tape.width',
  key: 'width_mm',
  name: words('Tape width', 'Bandbreite'),
  unit: 'mm',
  bounds: { unit: 'mm', min: 5, max: mostDepth_mm },
  within: 'depth',
  because: words('width of the tape: its depth in the joint', 'Breite des Bands: seine Tiefe in der Fuge'),
}

/** The class of a tape to DIN 18542, of those that its kind is made in. */
export const tapeClass = (choices: SealChoice['choices']): SealChoice => ({
  id: 'tape.class',
  key: 'class',
  name: words('Tape class', 'Bandklasse'),
  choices,
  because: words('as printed on the roll, DIN 18542', 'Aufdruck der Rolle, DIN 18542'),
})

/** A class by its short name, with what it is for. */
export const asClass = (value: string, en: string, de: string): Choice => ({
  value,
  name: words(`${value}, ${en}`, `${value}, ${de}`),
})

/** Setback of a tape from the front edge of the joint, 2 to 3 mm: from memory. */
export const setback_mm = 2
