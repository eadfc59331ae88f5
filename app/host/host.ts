import type { RecentAbout } from '../../core/detail'
import type { Language } from '../../core/words'
import type { About, HostNews, Kept, KeptCopy, Paper, Read, RecentFile, Written } from '../bridge'

/** What the window may ask of its surroundings: the desktop runtime, or a plain browser. Nothing else reaches outside. */
export type Host = {
  readonly kind: 'desktop' | 'browser'
  /** lets the user choose a file to open */
  readonly open: () => Promise<Read>
  /** opens a file of the recent list again */
  readonly openRecent: (token: string) => Promise<Read>
  /** the file that was dropped on the window; where one was dropped that is none (a link, a folder), why it is not opened */
  readonly dropped: (what: DataTransfer) => Promise<Read>
  /** lets the user choose photos of the site; none: called off */
  readonly photos: () => Promise<readonly File[]>
  /** writes a file that was opened or saved before, in its place */
  readonly save: (token: string, name: string, bytes: Uint8Array) => Promise<Written>
  /** lets the user choose where to write; `kind` is the extension without its dot */
  readonly saveAs: (name: string, kind: string, bytes: Uint8Array) => Promise<Written>
  /** what a file holds now; nothing where it cannot be seen without asking the user */
  readonly peek: (token: string) => Promise<Uint8Array | undefined>
  /** the files that were opened or saved last, newest first */
  readonly recents: () => Promise<readonly RecentFile[]>
  /** puts a file at the top of the recent list, with what it shows there */
  readonly remember: (token: string, about: RecentAbout) => Promise<void>
  readonly forget: (token: string) => Promise<void>
  readonly forgetAll: () => Promise<void>
  /** keeps a copy of unsaved work, apart from the user's files */
  readonly keepCopy: (copy: KeptCopy) => Promise<Kept>
  /** the copies that a crash left, newest first; never one of work that is open elsewhere */
  readonly copies: () => Promise<readonly KeptCopy[]>
  readonly letGo: (document: string) => Promise<void>
  /** says that a document is open here, so that nobody else offers its copies; the answer ends that */
  readonly hold: (document: string) => () => void
  /** prints the page as it is laid out for print, on paper of this size and at true size */
  readonly print: (paper: Paper) => Promise<void>
  /** nothing in a plain browser, which has no program around the window */
  readonly about: () => Promise<About | undefined>
  readonly restart: (how: 'usual' | 'safe') => void
  /** the language of menus and dialogs that are not the window's own */
  readonly setLanguage: (language: Language) => void
  /** tells the surroundings whether unsaved work is open, so that closing asks first */
  readonly setUnsaved: (unsaved: boolean) => void
  /** asks before closing: `mayClose` puts the question to the user and answers whether to go on */
  readonly beforeClose: (mayClose: () => Promise<boolean>) => void
  /** hears what the surroundings have to tell */
  readonly listen: (hear: (news: HostNews) => void) => void
}
