/** A screw that bends across a joint: what its core bears, and how long it is free. */
export type BentScrew = {
  readonly core_mm: number
  readonly steel_N_mm2: number
  /** widest joint: from the frame to the wall */
  readonly joint_mm: number
  /** how deep in the base it counts as held, in diameters of its core */
  readonly held: number
}

/** Design moment of the core in N·mm: 1.2 W f_u over the factor of steel (ETAG 001, annex C, 5.2.3.2). */
export const momentOf = ({ core_mm, steel_N_mm2 }: BentScrew): number =>
  (1.2 * ((Math.PI * core_mm ** 3) / 32) * steel_N_mm2) / steelFactor

/** Lever of the force in mm: the joint and how far the screw is free within the base. */
export const lever_mm = ({ core_mm, joint_mm, held }: BentScrew): number => joint_mm + held * core_mm

/** Design shear in N that the screw takes across the joint; `restraint` 1: free to turn, 2: held at both ends. */
export const bendingResistance_N = (it: BentScrew, restraint: number): number =>
  (restraint * momentOf(it)) / lever_mm(it)

/** Partial factor of steel in bending (ETAG 001, annex C, from memory). */
export const steelFactor = 1.25
