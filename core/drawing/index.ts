export { layers, pens } from './mark'
export type { Drawing, Hatching, Layer, Mark, Pen, View, ViewMark, Writers } from './mark'
