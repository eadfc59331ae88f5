const signs = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/'

/** Bytes as base64 with padding (RFC 4648). */
export const base64 = (bytes: Uint8Array): string => {
  let out = ''
  for (let at = 0; at < bytes.length; at += 3) {
    const [a, b, c] = [bytes[at] ?? 0, bytes[at + 1], bytes[at + 2]]
    const four = (a << 16) | ((b ?? 0) << 8) | (c ?? 0)
    out += signs.charAt(four >> 18) + signs.charAt((four >> 12) & 63)
    out +=
      (b === undefined ? '=' : signs.charAt((four >> 6) & 63)) +
      (c === undefined ? '=' : signs.charAt(four & 63))
  }
  return out
}
