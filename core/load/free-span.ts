/** A member that spans free under a line load. */
export type FreeSpan = { readonly load_N_m: number; readonly span_mm: number; readonly modulus_N_mm2: number }

/** Its deflection in mm: 5 q L⁴ / 384 E I. */
export const deflection_mm = ({ load_N_m, span_mm, modulus_N_mm2 }: FreeSpan, inertia_cm4: number): number =>
  (5 * (load_N_m / 1000) * span_mm ** 4) / (384 * modulus_N_mm2 * inertia_cm4 * mm4InCm4)

/** The second moment in cm⁴ with which it bends by no more than a part of its span. */
export const neededInertia_cm4 = (it: FreeSpan, part: number): number =>
  deflection_mm(it, 1) / (it.span_mm / part)

const mm4InCm4 = 1e4
