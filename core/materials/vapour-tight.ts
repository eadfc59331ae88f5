/**
 * The vapour resistance factor of glass, metal and foam glass. EN ISO 10456 writes "infinite", which a file cannot
 * hold and a solver cannot divide by: 2 mm of this are 2000 m of air, above the 1500 m from which a layer counts as
 * tight (DIN 4108-3). Own convention.
 */
export const vapourTight = { dry: 1_000_000, wet: 1_000_000 } as const
