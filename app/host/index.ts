export type { About, HostFile, HostNews, KeptCopy, Paper, Read, RecentFile, Written } from '../bridge'
export { hostOf } from './host-of'
export type { Host } from './host'
export { droppedPhotos } from './file-input'
