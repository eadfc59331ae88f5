import type { HostFile, HostNews, Written } from '../bridge'

/** What the window may ask of its surroundings: the desktop runtime, or a plain browser. Nothing else reaches outside. */
export type Host = {
  readonly kind: 'desktop' | 'browser'
  /** lets the user choose a project file; nothing when called off */
  readonly open: () => Promise<HostFile | undefined>
  /** writes a file that was opened or saved before, in its place */
  readonly save: (token: string, name: string, bytes: Uint8Array) => Promise<Written>
  /** lets the user choose where to write; `kind` is the extension without its dot */
  readonly saveAs: (name: string, kind: string, bytes: Uint8Array) => Promise<Written>
  /** tells the surroundings whether unsaved work is open, so that closing asks first */
  readonly setUnsaved: (unsaved: boolean) => void
  /** asks before closing: `mayClose` puts the question to the user and answers whether to go on */
  readonly beforeClose: (mayClose: () => Promise<boolean>) => void
  /** hears what the surroundings have to tell */
  readonly listen: (hear: (news: HostNews) => void) => void
}
