export type { Face, JointState, Section, Seen } from './section'
