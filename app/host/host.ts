/** A file as the window sees it: its name and its bytes. Where it lies is the host's business. */
export type HostFile = { readonly name: string; readonly bytes: Uint8Array; readonly token: string }

/** What became of an attempt to write: where it lies now, why it failed, or that the user called it off. */
export type Written =
  | { readonly kind: 'written'; readonly name: string; readonly token: string }
  | { readonly kind: 'failed'; readonly why: string }
  | { readonly kind: 'cancelled' }

/** What the window may ask of its surroundings: the desktop runtime, or a plain browser. Nothing else reaches outside. */
export type Host = {
  readonly kind: 'desktop' | 'browser'
  /** lets the user choose a project file; nothing when called off */
  readonly open: () => Promise<HostFile | undefined>
  /** writes a file that was opened or saved before, in its place */
  readonly save: (token: string, name: string, bytes: Uint8Array) => Promise<Written>
  /** lets the user choose where to write; `kind` is the extension without its dot */
  readonly saveAs: (name: string, kind: string, bytes: Uint8Array) => Promise<Written>
  /** the bundled samples, by file name */
  readonly samples: () => Promise<readonly HostFile[]>
  /** tells the surroundings whether unsaved work is open, so that closing asks first */
  readonly setUnsaved: (unsaved: boolean) => void
}
