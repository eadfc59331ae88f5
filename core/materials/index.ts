export { isFirm } from './firm'
export { material, materials } from './library/all'
export type { Material } from './material'
export { vapourTight } from './vapour-tight'
