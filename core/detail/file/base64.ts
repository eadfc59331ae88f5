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

/** How many bytes a base64 text holds, by its length. */
export const sizeOf_bytes = (text: string): number => Math.floor((3 * text.length) / 4)
