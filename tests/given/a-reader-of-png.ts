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
    const from = y * (row + 1) + 1
    const to = y * row
    const filter = raw[from - 1]!
    if (filter === 0) {
      out.set(raw.subarray(from, from + row), to)
      continue
    }
    for (let x = 0; x < row; x++) {
      const left = x >= step ? out[to + x - step]! : 0
      const up = y > 0 ? out[to - row + x]! : 0
      const corner = x >= step && y > 0 ? out[to - row + x - step]! : 0
      const guess =
        filter === 1 ? left : filter === 2 ? up : filter === 3 ? (left + up) >> 1 : paeth(left, up, corner)
      out[to + x] = raw[from + x]! + guess
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
  for (let at = 0, from = 0, to = 0; at < count; at++, from += channels, to += 3) {
    const opacity = channels === 4 ? pixels[from + 3]! : 255
    for (let c = 0; c < 3; c++)
      rgb[to + c] =
        opacity === 255 ? pixels[from + c]! : Math.round(255 + ((pixels[from + c]! - 255) * opacity) / 255)
  }
  return rgb
}

/** The share of pixels that differ by more than a quarter of full strength after each picture was blurred by 3 × 3. */
export const shareThatDiffers = (a: Picture, b: Picture): number => {
  if (a.width !== b.width || a.height !== b.height)
    throw new Error(`${a.width} × ${a.height}, ${b.width} × ${b.height}`)
  const { width, height } = a
  const row = width * 3
  // what was blurred apart differs as their difference blurred: three rows of it are kept, summed along the row
  const rows = [0, 1, 2].map(() => new Int16Array(row))
  const read = (y: number): void => {
    const to = rows[y % 3]!
    const from = y * row
    for (let x = 0; x < row; x++) {
      const at = from + x
      let sum = a.rgb[at]! - b.rgb[at]!
      if (x >= 3) sum += a.rgb[at - 3]! - b.rgb[at - 3]!
      if (x + 3 < row) sum += a.rgb[at + 3]! - b.rgb[at + 3]!
      to[x] = sum
    }
  }
  read(0)
  let differing = 0
  for (let y = 0; y < height; y++) {
    if (y + 1 < height) read(y + 1)
    const [before, own, after] = [y > 0 ? rows[(y + 2) % 3]! : undefined, rows[y % 3]!, y + 1 < height ? rows[(y + 1) % 3]! : undefined] // prettier-ignore
    const high = 1 + (before ? 1 : 0) + (after ? 1 : 0)
    for (let x = 0; x < row; x += 3) {
      const most = 64 * high * (x === 0 || x + 3 >= row ? 2 : 3)
      for (let c = x; c < x + 3; c++) {
        const sum = own[c]! + (before ? before[c]! : 0) + (after ? after[c]! : 0)
        if (sum > most || sum < -most) {
          differing++
          break
        }
      }
    }
  }
  return differing / (width * height)
}
