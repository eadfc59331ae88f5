import { capitalShare, type Drawing, family, inkOf, type Letters } from '../../../core/drawing'
import { painted } from '../board/paint'

/** Dots to the inch of a picture: fine enough for a line of 0.18 mm to be two dots wide. */
const dpi = 300

/** A sheet as a picture of 300 dots to the inch that knows its size on paper. */
export const pngOf = async (drawing: Drawing): Promise<Uint8Array> => {
  const [width, height] = drawing.size_mm
  const dots_mm = dpi / 25.4
  const canvas = new OffscreenCanvas(Math.round(width * dots_mm), Math.round(height * dots_mm))
  const context = canvas.getContext('2d')
  if (context === null) throw new Error('this window paints no pictures')
  await Promise.all(['400', '700'].map(it => document.fonts.load(`${it} 10px "${family}"`)))
  context.fillStyle = '#FFFFFF'
  context.fillRect(0, 0, canvas.width, canvas.height)
  context.setTransform(dots_mm, 0, 0, -dots_mm, 0, canvas.height)
  context.fontKerning = 'none'
  const onPaper = { pen: (_: string, colour: string) => colour, fill: (_: string, colour: string) => colour, letters: '#000000' } // prettier-ignore
  for (const group of inkOf(drawing)) {
    const inks = group.inks.filter(it => it.kind !== 'letters')
    // A canvas off the screen paints as one on it does.
    painted({ ...group, inks }, onPaper).draw(context as unknown as CanvasRenderingContext2D)
    for (const it of group.inks) if (it.kind === 'letters') paintLetters(context, it)
  }
  const blob = await canvas.convertToBlob({ type: 'image/png' })
  return sized(new Uint8Array(await blob.arrayBuffer()))
}

const paintLetters = (context: OffscreenCanvasRenderingContext2D, it: Letters): void => {
  context.save()
  context.translate(it.at[0], it.at[1])
  context.rotate((it.turn_deg * Math.PI) / 180)
  context.scale(1, -1)
  context.font = `${it.bold ? 700 : 400} ${it.height_mm / capitalShare}px "${family}"`
  context.textAlign = it.anchor === 'start' ? 'left' : it.anchor === 'end' ? 'right' : 'center'
  context.fillStyle = it.colour
  context.fillText(it.words, 0, 0)
  context.restore()
}

/** The picture with its dots to the metre (chunk pHYs of PNG, W3C), before all else that it says. */
const sized = (png: Uint8Array): Uint8Array => {
  const head = 33
  const chunk = new Uint8Array(21)
  const view = new DataView(chunk.buffer)
  const dots_m = Math.round((dpi / 25.4) * 1000)
  view.setUint32(0, 9)
  chunk.set([0x70, 0x48, 0x59, 0x73], 4)
  view.setUint32(8, dots_m)
  view.setUint32(12, dots_m)
  chunk[16] = 1
  view.setUint32(17, checksum(chunk.subarray(4, 17)))
  const out = new Uint8Array(png.length + chunk.length)
  out.set(png.subarray(0, head))
  out.set(chunk, head)
  out.set(png.subarray(head), head + chunk.length)
  return out
}

/** The checksum of a chunk (CRC-32 as PNG has it). */
const checksum = (bytes: Uint8Array): number => {
  let sum = 0xffffffff
  for (const byte of bytes) {
    sum ^= byte
    for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1
  }
  return (sum ^ 0xffffffff) >>> 0
}
