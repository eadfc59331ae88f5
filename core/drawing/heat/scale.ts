/** What temperatures a picture spans, and the edges of its bands: every whole degree between outside and inside. */
export type HeatScale = {
  readonly low_C: number
  readonly high_C: number
  /** ascending, inside `low_C` … `high_C` */
  readonly edges_C: readonly number[]
}

/** The scale between two airs. It hangs on the climate alone, so nothing changes its colour while a part is moved. */
export const heatScale = (one_C: number, other_C: number): HeatScale => {
  const [low_C, high_C] = [Math.min(one_C, other_C), Math.max(one_C, other_C)]
  const first = Math.floor(low_C) + 1
  const count = Math.max(0, Math.ceil(high_C) - first)
  return { low_C, high_C, edges_C: Array.from({ length: count }, (_, i) => first + i) }
}

/** Whether a line is a strong one. */
export const isStrong = (level_C: number): boolean => level_C % 5 === 0

/**
 * Cividis in eleven steps, straight between them: nearly the same to all colour-deficient readers (Nuñez, Anderton &
 * Renslow 2018, published). Cold is dark and blue, warm is light and yellow.
 */
const steps = [
  [0x00, 0x22, 0x4e], [0x12, 0x35, 0x70], [0x3b, 0x49, 0x6c], [0x57, 0x5d, 0x6d], [0x70, 0x71, 0x73], [0x8a, 0x86, 0x78],
  [0xa5, 0x9c, 0x74], [0xc3, 0xb3, 0x69], [0xe1, 0xcc, 0x55], [0xf2, 0xde, 0x4c], [0xfe, 0xe8, 0x38],
] as const // prettier-ignore

/** How much of the colour lies on white: lines and outlines over it stay readable. Ours, tried in print. */
const strength = 0.72

/** The colour of a band by its number: that of its middle, on white paper. */
export const bandColour = ({ low_C, high_C, edges_C }: HeatScale, band: number): string => {
  const [from, to] = [edges_C[band - 1] ?? low_C, edges_C[band] ?? high_C]
  return onWhite(high_C > low_C ? ((from + to) / 2 - low_C) / (high_C - low_C) : 0.5)
}

const onWhite = (share: number): string => {
  const place = Math.min(1, Math.max(0, share)) * (steps.length - 1)
  const at = Math.min(steps.length - 2, Math.floor(place))
  const parts = [0, 1, 2].map(i => {
    const [a, b] = [steps[at]?.[i] ?? 0, steps[at + 1]?.[i] ?? 0]
    return Math.round(255 + strength * (a + (place - at) * (b - a) - 255))
  })
  return `#${parts.map(it => it.toString(16).padStart(2, '0')).join('')}`.toUpperCase()
}
