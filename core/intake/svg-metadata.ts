/** The project that an SVG of this program carries, as its bytes in base64; nothing where there is none. */
export const metadataIn = (svg: string): string | undefined =>
  /<metadata\b[^<>]*\bid="model"[^<>]*>([A-Za-z0-9+/=\s]*)<\/metadata>/.exec(svg)?.[1]

/** Whether a text declares a document type: no drawing of ours does, and what it declares could grow without end. */
export const declaresTypes = (svg: string): boolean => /<!(?:DOCTYPE|ENTITY)/i.test(svg)

/** Bytes from base64 (RFC 4648); nothing where it is damaged. */
export const fromBase64 = (text: string): Uint8Array | undefined => {
  const signs = text.replace(/\s+/g, '')
  const body = signs.replace(/={1,2}$/, '')
  if (signs.length % 4 !== 0 || body.length % 4 === 1 || /[^A-Za-z0-9+/]/.test(body)) return undefined
  const bytes = new Uint8Array(Math.floor((body.length * 3) / 4))
  let [held, bits, next] = [0, 0, 0]
  for (let at = 0; at < body.length; at++) {
    held = ((held << 6) | valueOf(body.charCodeAt(at))) & 0xffff
    bits += 6
    if (bits < 8) continue
    bits -= 8
    bytes[next++] = (held >> bits) & 0xff
  }
  return bytes
}

/** A to Z, a to z, 0 to 9, plus, stroke: 0 to 63. */
const valueOf = (code: number): number =>
  97 <= code ? code - 71 : 65 <= code ? code - 65 : 48 <= code ? code + 4 : code === 43 ? 62 : 63
