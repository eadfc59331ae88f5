/** The number of the nearest colour of the fixed palette of 255. White and black are one: 7 is what stands off the paper. */
export const colourIndex = (colour: string): number => {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map(at => parseInt(colour.slice(at, at + 2), 16))
  if (Math.max(red, green, blue) < nearBlack) return 7
  let [best, least] = [7, Infinity]
  for (const [index, [r, g, b]] of palette) {
    const off = (r - red) ** 2 + (g - green) ** 2 + (b - blue) ** 2
    if (off < least) [best, least] = [index, off]
  }
  return best
}

/** A colour as one number. */
export const trueColour = (colour: string): number => parseInt(colour.slice(1), 16)

const nearBlack = 0x28

type Rgb = readonly [red: number, green: number, blue: number]

/** Colours 10 to 249 by hue, five depths, full and half saturation; then greys. From memory. */
const palette: readonly (readonly [index: number, colour: Rgb])[] = [
  ...Array.from({ length: 240 }, (_, at): readonly [number, Rgb] => [at + 10, hued(at)]),
  ...[51, 91, 132, 173, 214, 255].map((grey, at): readonly [number, Rgb] => [250 + at, [grey, grey, grey]]),
]

function hued(at: number): Rgb {
  const depth = [1, 0.65, 0.5, 0.3, 0.15][Math.floor((at % 10) / 2)] ?? 1
  const floor = at % 2 === 0 ? 0 : 0.5
  const channel = (turn: number) => {
    const place = (Math.floor(at / 10) / 4 + turn) % 6
    const full = Math.max(0, Math.min(1, Math.abs(place - 3) - 1))
    return Math.floor(255 * depth * (floor + (1 - floor) * full))
  }
  return [channel(0), channel(4), channel(2)]
}
