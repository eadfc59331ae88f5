export { hostOf } from './host-of'
export type { Host } from './host'
