import { z } from 'zod'

/** A rectangle of the screen in its own pixels. */
export type Bounds = {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** Where a window opens: without a place the system chooses one. */
export type Opening = {
  readonly width: number
  readonly height: number
  readonly x?: number
  readonly y?: number
  readonly maximised: boolean
}

/** No window is smaller. The narrow arrangement fits into it. */
export const least = { width: 1024, height: 640 } as const

const usual = { width: 1440, height: 900, maximised: false } as const

/** So much of a window's upper edge must be on a screen that a hand can take it there. *Ours.* */
const grasp = { width: 120, height: 32 } as const

const stored = z.strictObject({
  x: z.int(),
  y: z.int(),
  width: z.int().min(1).max(30_000),
  height: z.int().min(1).max(30_000),
  maximised: z.boolean(),
})

/**
 * Where the window opens, from what was remembered: never smaller than it may be, never larger than its screen, and only
 * where its upper edge can be taken hold of on a screen that is there now. Otherwise as at the first start.
 */
export const openingBounds = (remembered: string, screens: readonly Bounds[]): Opening => {
  const found = parsed(remembered)
  if (found === undefined) return usual
  const edge = { x: found.x, y: found.y, width: found.width, height: grasp.height }
  const screen = screens.find(it => {
    const [wide, high] = shared(edge, it)
    return wide >= grasp.width && high >= grasp.height
  })
  const size = (from: number, least: number, most: number | undefined): number =>
    Math.max(least, Math.min(from, most ?? from))
  const width = size(found.width, least.width, screen?.width)
  const height = size(found.height, least.height, screen?.height)
  return screen === undefined
    ? { width: usual.width, height: usual.height, maximised: found.maximised }
    : { x: found.x, y: found.y, width, height, maximised: found.maximised }
}

/** What is remembered of a window. */
export const writtenBounds = ({ x, y, width, height }: Bounds, maximised: boolean): string =>
  JSON.stringify({ x, y, width, height, maximised })

const parsed = (text: string) => {
  try {
    return stored.safeParse(JSON.parse(text)).data
  } catch {
    return undefined
  }
}

const shared = (a: Bounds, b: Bounds): readonly [wide: number, high: number] => [
  Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x),
  Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y),
]
