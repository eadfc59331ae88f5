import { type Words, words } from '../words'

/** The sides of an opening, seen from outside. */
export const sides = ['head', 'left', 'right', 'sill'] as const
export type Side = (typeof sides)[number]
export const sideName: Readonly<Record<Side, Words>> = {
  head: words('head', 'Sturz'),
  left: words('left jamb', 'linke Leibung'),
  right: words('right jamb', 'rechte Leibung'),
  sill: words('sill', 'Brüstung'),
}

/** The three seal planes, from inside to outside. */
export const planes = ['inner', 'middle', 'outer'] as const
export type Plane = (typeof planes)[number]
export const planeName: Readonly<Record<Plane, Words>> = {
  inner: words('inner plane', 'innere Ebene'),
  middle: words('middle plane', 'mittlere Ebene'),
  outer: words('outer plane', 'äußere Ebene'),
}

/** Frame materials that move alike. */
export const frameMaterials = [
  'pvc-white',
  'pvc-coloured',
  'aluminium',
  'timber',
  'timber-aluminium',
] as const
export type FrameMaterial = (typeof frameMaterials)[number]
export const frameMaterialName: Readonly<Record<FrameMaterial, Words>> = {
  'pvc-white': words('PVC-U, white', 'PVC-U, weiß'),
  'pvc-coloured': words('PVC-U, coloured', 'PVC-U, farbig'),
  aluminium: words('aluminium', 'Aluminium'),
  timber: words('timber', 'Holz'),
  'timber-aluminium': words('timber under aluminium', 'Holz-Aluminium'),
}

/** How the reveal receives the frame. */
export const revealForms = ['butt', 'splayed', 'inner-rebate', 'outer-rebate'] as const
export type RevealForm = (typeof revealForms)[number]
export const revealFormName: Readonly<Record<RevealForm, Words>> = {
  butt: words('straight reveal', 'stumpfe Leibung'),
  splayed: words('splayed reveal', 'geschrägte Leibung'),
  'inner-rebate': words('inner rebate', 'Innenanschlag'),
  'outer-rebate': words('outer rebate', 'Außenanschlag'),
}

/** What a layer of the wall is there for. A layer may have several duties. */
export const duties = ['bearing', 'insulating', 'airtight', 'rain', 'finish'] as const
export type Duty = (typeof duties)[number]
export const dutyName: Readonly<Record<Duty, Words>> = {
  bearing: words('bearing', 'tragend'),
  insulating: words('insulating', 'dämmend'),
  airtight: words('airtight', 'luftdicht'),
  rain: words('rain', 'Regenschutz'),
  finish: words('finish', 'Oberfläche'),
}
