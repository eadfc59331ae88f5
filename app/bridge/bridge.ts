import type { Copy, RecentAbout } from '../../core/detail'
import type { Language, Words } from '../../core/words'

/** A file as the window sees it: its name and its bytes. Where it lies is the host's business; the token stands for it. */
export type HostFile = { readonly name: string; readonly bytes: Uint8Array; readonly token: string }

/** What became of an attempt to read: the file, why not, or that the user called it off. */
export type Read =
  | { readonly kind: 'read'; readonly file: HostFile }
  | { readonly kind: 'failed'; readonly why: Words }
  | { readonly kind: 'cancelled' }

/** What became of an attempt to write: where it lies now, why it failed, or that the user called it off. */
export type Written =
  | { readonly kind: 'written'; readonly name: string; readonly token: string }
  | { readonly kind: 'failed'; readonly why: Words }
  | { readonly kind: 'cancelled' }

/** A file of the recent list, and whether it is still where it was. */
export type RecentFile = {
  readonly token: string
  readonly name: string
  readonly at: string
  readonly about: RecentAbout
  readonly isThere: boolean
}

/** A copy of unsaved work; its file by a token, empty where it has none. */
export type KeptCopy = Omit<Copy, 'place'> & { readonly token: string }

/** What became of a copy: it was written and read back, or why not. */
export type Kept = { readonly kind: 'kept' } | { readonly kind: 'failed'; readonly why: Words }

/** A file object of the page, which only the preload can look into. */
export type PageFile = { readonly name: string; readonly size: number }

/** The paper that is printed on. */
export type Paper = { readonly width_mm: number; readonly height_mm: number }

/** The desktop program itself: its version, and whether it was started without the graphics card. */
export type About = { readonly version: string; readonly isSafe: boolean }

/** Commands that a menu of the surroundings can give. */
export const menuCommands = [
  'new', 'open', 'save', 'save-as', 'print', 'undo', 'redo', 'find-command', 'settings', 'about',
  'show-joint', 'show-sheet', 'show-work', 'show-teach', 'zoom-in', 'zoom-out', 'fit',
] as const // prettier-ignore
export type MenuCommand = (typeof menuCommands)[number]

/** What the surroundings tell the window: a command of their menu, or a file that was opened from outside. */
export type HostNews =
  { readonly kind: 'command'; readonly command: MenuCommand } | { readonly kind: 'file'; readonly read: Read }

/** Names of the messages between window and desktop program. */
export const channels = {
  open: 'project:open',
  openRecent: 'project:open-recent',
  dropped: 'project:dropped',
  save: 'project:save',
  saveAs: 'project:save-as',
  peek: 'project:peek',
  recents: 'recent:list',
  remember: 'recent:remember',
  forget: 'recent:forget',
  forgetAll: 'recent:forget-all',
  keepCopy: 'copy:keep',
  copies: 'copy:list',
  letGo: 'copy:let-go',
  print: 'window:print',
  about: 'program:about',
  restart: 'program:restart',
  language: 'program:language',
  unsaved: 'window:unsaved',
  closeAsked: 'window:close-asked',
  closeAnswered: 'window:close-answered',
  news: 'window:news',
  ready: 'window:ready',
} as const

/** The bridge that the preload puts into the page: small named functions, no message object passes. */
export type Bridge = {
  readonly open: () => Promise<Read>
  readonly openRecent: (token: string) => Promise<Read>
  /** a file that was dropped on the window: its path is read where the page cannot make one up */
  readonly dropped: (file: PageFile) => Promise<Read>
  readonly save: (token: string, name: string, bytes: Uint8Array) => Promise<Written>
  readonly saveAs: (name: string, kind: string, bytes: Uint8Array) => Promise<Written>
  readonly peek: (token: string) => Promise<Uint8Array | undefined>
  readonly recents: () => Promise<readonly RecentFile[]>
  readonly remember: (token: string, about: RecentAbout) => Promise<void>
  readonly forget: (token: string) => Promise<void>
  readonly forgetAll: () => Promise<void>
  readonly keepCopy: (copy: KeptCopy) => Promise<Kept>
  readonly copies: () => Promise<readonly KeptCopy[]>
  readonly letGo: (document: string) => Promise<void>
  readonly print: (paper: Paper) => Promise<void>
  readonly about: () => Promise<About>
  readonly restart: (how: 'usual' | 'safe') => void
  readonly setLanguage: (language: Language) => void
  readonly setUnsaved: (unsaved: boolean) => void
  readonly onCloseAsked: (asked: () => void) => void
  readonly answerClose: (mayClose: boolean) => void
  readonly onNews: (hear: (news: HostNews) => void) => void
}

/** The name under which the page finds the bridge. */
export const bridgeName = 'jambwrightBridge'
