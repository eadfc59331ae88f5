/** The text of bytes in UTF-8 (RFC 3629), or nothing where they are none: broken, overlong or half letters. */
export const textOf = (bytes: Uint8Array): string | undefined => {
  const pieces: string[] = []
  let codes: number[] = []
  for (let at = 0; at < bytes.length;) {
    const first = bytes[at] ?? 0
    const more =
      first < 0x80 ? 0 : first < 0xc2 ? -1 : first < 0xe0 ? 1 : first < 0xf0 ? 2 : first < 0xf5 ? 3 : -1
    if (more < 0 || at + more >= bytes.length) return undefined
    let code = more === 0 ? first : first & (0x3f >> more)
    for (let next = 1; next <= more; next++) {
      const byte = bytes[at + next] ?? 0
      if ((byte & 0xc0) !== 0x80) return undefined
      code = (code << 6) | (byte & 0x3f)
    }
    if (code < (least[more] ?? 0) || 0x10ffff < code || (0xd800 <= code && code <= 0xdfff)) return undefined
    codes.push(code)
    at += more + 1
    if (codes.length === pieceLength) {
      pieces.push(String.fromCodePoint(...codes))
      codes = []
    }
  }
  return pieces.join('') + String.fromCodePoint(...codes)
}

/** The smallest letter that needs so many further bytes. */
const least = [0, 0x80, 0x800, 0x10000]

/** How many letters are turned into text at once: calls take only so many values. */
const pieceLength = 4096
