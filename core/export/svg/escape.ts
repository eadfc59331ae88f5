import { printable } from '../../drawing'

/** Words between tags or in a quoted attribute. */
export const escaped = (words: string): string =>
  printable(words).replace(/[&<>"']/g, sign => entities[sign] ?? '')

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
}
