/** Versions that are written: 2007 holds any letter and any colour; 2000 is read by nearly everything. */
export type Version = 'AC1021' | 'AC1015'

/**
 * Words of TEXT and attributes: what a reader would take for a code (`%%d`, `^J`, `\U+0041`) stays the letters it is.
 * Two per cent signs are parted by a space, because readers do not agree how else to write them.
 */
export const plainWords = (words: string): string =>
  words
    .replace(/%(?=%)/g, '% ')
    .replace(/\^/g, '^ ')
    .replace(/\\(?=[UuMm]\+)/g, '\\U+005C')

/** Words of MTEXT: backslashes and braces stand for themselves. */
export const paragraphWords = (words: string): string =>
  words
    .replace(/[\\{}]/g, sign => `\\${sign}`)
    .replace(/%(?=%)/g, '% ')
    .replace(/\^/g, '^ ')

/** Bytes of a finished file: UTF-8 in the newer version is written elsewhere, the older one has the Windows code page. */
export const codePageBytes = (text: string): Uint8Array => {
  const bytes = new Uint8Array(text.length)
  for (let at = 0; at < text.length; at++) bytes[at] = byteOf(text.charCodeAt(at)) ?? question
  return bytes
}

/** Letters that the Windows code page lacks, by their number. */
export const escapedForCodePage = (words: string): string => {
  let out = ''
  for (let at = 0; at < words.length; at++) {
    const code = words.charCodeAt(at)
    out +=
      byteOf(code) === undefined
        ? `\\U+${code.toString(16).toUpperCase().padStart(4, '0')}`
        : words.charAt(at)
  }
  return out
}

const question = 63

const byteOf = (code: number): number | undefined => {
  if (code < 0x80 || (0xa0 <= code && code <= 0xff)) return code
  const at = upper.indexOf(code)
  return at < 0 ? undefined : 0x80 + at
}

/** What the Windows code page 1252 has from 0x80 to 0x9F; 0 where it has nothing. */
const upper: readonly number[] = [
  0x20ac, 0, 0x201a, 0x0192, 0x201e, 0x2026, 0x2020, 0x2021, 0x02c6, 0x2030, 0x0160, 0x2039, 0x0152, 0, 0x017d, 0,
  0, 0x2018, 0x2019, 0x201c, 0x201d, 0x2022, 0x2013, 0x2014, 0x02dc, 0x2122, 0x0161, 0x203a, 0x0153, 0, 0x017e, 0x0178,
] // prettier-ignore
