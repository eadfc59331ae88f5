import type { Words } from '../../core/words'

/** A file as the window sees it: its name and its bytes. Where it lies is the host's business; the token stands for it. */
export type HostFile = { readonly name: string; readonly bytes: Uint8Array; readonly token: string }

/** What became of an attempt to write: where it lies now, why it failed, or that the user called it off. */
export type Written =
  | { readonly kind: 'written'; readonly name: string; readonly token: string }
  | { readonly kind: 'failed'; readonly why: Words }
  | { readonly kind: 'cancelled' }

/** What the surroundings tell the window: a command of their menu, or a file that was opened from outside. */
export type HostNews =
  | { readonly kind: 'command'; readonly command: 'open' | 'save' | 'save-as' }
  | { readonly kind: 'file'; readonly file: HostFile }

/** Names of the messages between window and desktop program. */
export const channels = {
  open: 'project:open',
  save: 'project:save',
  saveAs: 'project:save-as',
  unsaved: 'window:unsaved',
  closeAsked: 'window:close-asked',
  closeAnswered: 'window:close-answered',
  news: 'window:news',
  ready: 'window:ready',
} as const

/** The bridge that the preload puts into the page: small named functions, no message object passes. */
export type Bridge = {
  readonly open: () => Promise<HostFile | undefined>
  readonly save: (token: string, name: string, bytes: Uint8Array) => Promise<Written>
  readonly saveAs: (name: string, kind: string, bytes: Uint8Array) => Promise<Written>
  readonly setUnsaved: (unsaved: boolean) => void
  readonly onCloseAsked: (asked: () => void) => void
  readonly answerClose: (mayClose: boolean) => void
  readonly onNews: (hear: (news: HostNews) => void) => void
}

/** The name under which the page finds the bridge. */
export const bridgeName = 'jambwrightBridge'
