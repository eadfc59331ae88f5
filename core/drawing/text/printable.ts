/**
 * Words as they may stand on a sheet: control characters and lone halves of pairs become the replacement sign, marks
 * that turn or hide the letters around them are taken out. A name from a file can so never change what the rest says.
 */
export const printable = (words: string): string =>
  words.replace(hidden, '').replace(controls, '\uFFFD').replace(lone, '\uFFFD')

/** Halves of letters that need two, without the other half. */
const lone = /\p{Surrogate}/gu

/** Marks of direction, joiners of no width, the byte order mark, and what only annotates. */
const hidden =
  /[\u00AD\u061C\u180E\u200B-\u200F\u202A-\u202E\u2060-\u206F\uFEFF\uFFF9-\uFFFB\u{E0000}-\u{E007F}]/gu

/** Control characters, line ends among them (a line of words is one line), and code points that are no letters. */
const controls = /[\u0000-\u001F\u007F-\u009F\u2028\u2029\uFFFE\uFFFF]/g // oxlint-disable-line no-control-regex
