import { inflateSync } from 'node:zlib'

/** A picture of 8 bits a channel: red, green, blue of each pixel, rows from the top. */
export type Picture = { readonly width: number; readonly height: number; readonly rgb: Uint8Array }

/** Reads a PNG of 8-bit colour with or without opacity, not interlaced: what the renderers of the tests write. */
export const pictureOf = (png: Uint8Array): Picture => {
  const bytes = Buffer.from(png)
  const chunks = chunksOf(bytes)
  const head = chunks.find(it => it.type === 'IHDR')?.data
  if (head === undefined || head[8] !== 8 || head[12] !== 0)
    throw new Error('not a PNG that the tests can read')
  const channels = head[9] === 6 ? 4 : head[9] === 2 ? 3 : 0
  if (channels === 0) throw new Error(`colour type ${head[9]}`)
  const [width, height] = [head.readUInt32BE(0), head.readUInt32BE(4)]
  const raw = inflateSync(Buffer.concat(chunks.filter(it => it.type === 'IDAT').map(it => it.data)))
  return { width, height, rgb: onWhite(unfiltered(raw, width * channels, height, channels), channels) }
}

const chunksOf = (bytes: Buffer): { type: string; data: Buffer }[] => {
  const chunks: { type: string; data: Buffer }[] = []
  for (let at = 8; at < bytes.length;) {
    const length = bytes.readUInt32BE(at)
    chunks.push({
      type: bytes.toString('latin1', at + 4, at + 8),
      data: bytes.subarray(at + 8, at + 8 + length),
    })
    at += length + 12
  }
  return chunks
}

const unfiltered = (raw: Buffer, row: number, height: number, step: number): Uint8Array => {
  const out = new Uint8Array(row * height)
  for (let y = 0; y < height; y++) {
    const filter = raw[y * (row + 1)]!
    for (let x = 0; x < row; x++) {
      const left = x >= step ? out[y * row + x - step]! : 0
      const up = y > 0 ? out[(y - 1) * row + x]! : 0
      const corner = x >= step && y > 0 ? out[(y - 1) * row + x - step]! : 0
      const guess = [0, left, up, (left + up) >> 1, paeth(left, up, corner)][filter] ?? 0
      out[y * row + x] = raw[y * (row + 1) + 1 + x]! + guess
    }
  }
  return out
}

const paeth = (a: number, b: number, c: number): number => {
  const [da, db, dc] = [Math.abs(b - c), Math.abs(a - c), Math.abs(a + b - 2 * c)]
  return da <= db && da <= dc ? a : db <= dc ? b : c
}

const onWhite = (pixels: Uint8Array, channels: number): Uint8Array => {
  const count = pixels.length / channels
  const rgb = new Uint8Array(count * 3)
  for (let at = 0; at < count; at++) {
    const opacity = channels === 4 ? pixels[at * 4 + 3]! / 255 : 1
    for (let c = 0; c < 3; c++)
      rgb[at * 3 + c] = Math.round(255 + (pixels[at * channels + c]! - 255) * opacity)
  }
  return rgb
}

/** The share of pixels that differ by more than a quarter of full strength after each picture was blurred by 3 × 3. */
export const shareThatDiffers = (a: Picture, b: Picture): number => {
  if (a.width !== b.width || a.height !== b.height)
    throw new Error(`${a.width} × ${a.height}, ${b.width} × ${b.height}`)
  const [one, two] = [blurred(a), blurred(b)]
  let differing = 0
  for (let at = 0; at < one.length; at += 3)
    if ([0, 1, 2].some(c => Math.abs(one[at + c]! - two[at + c]!) > 64)) differing++
  return (differing * 3) / one.length
}

const blurred = ({ width, height, rgb }: Picture): Float32Array => {
  const out = new Float32Array(rgb.length)
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      for (let c = 0; c < 3; c++) {
        let [sum, count] = [0, 0]
        for (let v = Math.max(0, y - 1); v <= Math.min(height - 1, y + 1); v++)
          for (let u = Math.max(0, x - 1); u <= Math.min(width - 1, x + 1); u++) {
            sum += rgb[(v * width + u) * 3 + c]!
            count++
          }
        out[(y * width + x) * 3 + c] = sum / count
      }
  return out
}
