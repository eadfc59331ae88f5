export { bridgeName, channels } from './bridge'
export type { Bridge, HostFile, HostNews, Written } from './bridge'
