export { formats } from './all'
export type { Format } from './format'
export { svgOf } from './svg/svg'
