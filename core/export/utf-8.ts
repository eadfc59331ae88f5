/** Text as UTF-8 (RFC 3629). Lone halves of pairs become the replacement sign. */
export const utf8 = (text: string): Uint8Array => {
  const bytes = new Uint8Array(text.length * 3)
  let end = 0
  for (const letter of text) {
    const given = letter.codePointAt(0) ?? 0
    const code = 0xd800 <= given && given <= 0xdfff ? 0xfffd : given
    if (code < 0x80) bytes[end++] = code
    else if (code < 0x800) {
      bytes[end++] = 0xc0 | (code >> 6)
      bytes[end++] = 0x80 | (code & 63)
    } else if (code < 0x10000) {
      bytes[end++] = 0xe0 | (code >> 12)
      bytes[end++] = 0x80 | ((code >> 6) & 63)
      bytes[end++] = 0x80 | (code & 63)
    } else {
      bytes[end++] = 0xf0 | (code >> 18)
      bytes[end++] = 0x80 | ((code >> 12) & 63)
      bytes[end++] = 0x80 | ((code >> 6) & 63)
      bytes[end++] = 0x80 | (code & 63)
    }
  }
  return bytes.slice(0, end)
}
