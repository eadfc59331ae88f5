export type { HostFile, HostNews, Written } from '../bridge'
export { hostOf } from './host-of'
export type { Host } from './host'
