import { Unzlib } from 'fflate'

/** Bytes pushed at once: deflate makes at most about a thousand out of one, so a bomb is seen early. */
const pushed_bytes = 16 * 1024

/** Inflates zlib data (RFC 1950) of a few bytes or many, but never into more than `most`; nothing where it is damaged. */
export const inflated = (data: Uint8Array, most_bytes: number): Uint8Array | 'too long' | undefined => {
  const chunks: Uint8Array[] = []
  let length = 0
  let ended = false
  const stream = new Unzlib((chunk, final) => {
    length += chunk.length
    ended = final
    if (length <= most_bytes) chunks.push(chunk)
  })
  try {
    for (let at = 0; at < data.length && length <= most_bytes; at += pushed_bytes)
      stream.push(data.subarray(at, at + pushed_bytes), at + pushed_bytes >= data.length)
  } catch {
    // The library throws at damaged data and says nothing else of it.
    return undefined
  }
  if (most_bytes < length) return 'too long'
  if (!ended) return undefined
  const all = new Uint8Array(length)
  let at = 0
  for (const chunk of chunks) {
    all.set(chunk, at)
    at += chunk.length
  }
  return all
}
