export type { Format } from './format'
