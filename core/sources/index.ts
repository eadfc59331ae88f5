export { trustName, trusts } from './citation'
export type { Citation, Trust } from './citation'
