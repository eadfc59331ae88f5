/**
 * A tint of the white paper as it looks on the dark board: same hue, dulled, as dark as the board can bear.
 * What is nearly black on paper (a gasket, a sealant) becomes nearly white. *Ours*, tried against every hatch.
 */
export const onDark = (hex: string): string => {
  const [h, s, l] = toHsl(hex)
  if (l < 0.45) return fromHsl(h, Math.min(s, 0.1), 0.72)
  // White is the paper itself.
  if (l > 0.985) return '#121618'
  return fromHsl(h, Math.min(0.36, s * 0.42), 0.165)
}

/** How much white a band has on paper, and of how much of its colour it is made on the dark board. *Ours*. */
const band = { white: 0.28, strength: 0.62, ground: [10, 13, 15] } as const

/** A band of a temperature field on the dark board: the same colour over the dark, so that light lines stay readable. */
export const heatOnDark = (hex: string): string => {
  const parts = [1, 3, 5].map((at, i) => {
    const full = (parseInt(hex.slice(at, at + 2), 16) - 255 * band.white) / (1 - band.white)
    const value = band.strength * Math.max(0, full) + (1 - band.strength) * (band.ground[i] ?? 0)
    return Math.round(value).toString(16).padStart(2, '0')
  })
  return `#${parts.join('')}`
}

const toHsl = (hex: string): readonly [number, number, number] => {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map(at => parseInt(hex.slice(at, at + 2), 16) / 255)
  const [high, low] = [Math.max(r, g, b), Math.min(r, g, b)]
  const [l, d] = [(high + low) / 2, high - low]
  if (d === 0) return [0, 0, l]
  const s = d / (1 - Math.abs(2 * l - 1))
  const h = high === r ? ((g - b) / d + 6) % 6 : high === g ? (b - r) / d + 2 : (r - g) / d + 4
  return [h * 60, s, l]
}

const fromHsl = (h: number, s: number, l: number): string => {
  const part = (n: number): string => {
    const k = (n + h / 30) % 12
    const value = l - s * Math.min(l, 1 - l) * Math.max(-1, Math.min(k - 3, 9 - k, 1))
    return Math.round(value * 255)
      .toString(16)
      .padStart(2, '0')
  }
  return `#${part(0)}${part(8)}${part(4)}`
}
