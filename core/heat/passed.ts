/**
 * The published cases that the solver is held to. A test runs them all, holds this list equal to the cases that are there,
 * and fails the build when one does not give its published answers: a build that exists has passed them.
 */
export const passedCases: readonly string[] = [
  'checkerboard',
  'circle',
  'corner',
  'fin',
  'iso-10077-2-d2',
  'iso-10077-2-d4',
  'iso-10077-2-d7',
  'iso-10211-case-1',
  'iso-10211-case-2',
  'jamb',
  'jamb-humidity',
  'jamb-vapour',
  'jamb-window',
  'sill',
  'sill-humidity',
  'sill-vapour',
  'strip',
]
