import type { Sureness } from '../../../core/study'

/**
 * How far a temperature may be off by its mesh: twice what twice the subdivisions change of it, as where corners are
 * sharp each halving takes at least half of what is left. Less than a hundredth of a kelvin is not claimed. Ours.
 */
export const meshSure_K = ({ mesh_K }: Pick<Sureness, 'mesh_K'>): number => Math.max(0.01, 2 * mesh_K)
