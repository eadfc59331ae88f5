export type { JointBand, Term } from './joint-band'
