/** A right sample and a wrong one that belong side by side, by the names of their files. */
export type SamplePair = { readonly right: string; readonly wrong: string }

/** What is shown side by side. */
export const pairs: readonly SamplePair[] = [
  { right: 'right-jamb', wrong: 'foam-only' },
  { right: 'right-jamb', wrong: 'tight-outside' },
  { right: 'on-consoles', wrong: 'soft-flank' },
  { right: 'right-jamb', wrong: 'frame-too-large' },
]
