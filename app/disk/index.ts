export { disk, ownDisk } from './disk'
