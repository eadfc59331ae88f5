export { formats } from './all'
export type { Fonts, Format, Information, Sheets } from './format'
export { attachedName } from './pdf/model'
export { svgOf } from './svg/svg'
