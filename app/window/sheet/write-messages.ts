import type { Fonts, Sheets } from '../../../core/export'

/** What a worker is asked to write, and what it answers. */
export type WriteAsked = { readonly format: string; readonly sheets: Sheets; readonly fonts: Fonts }
export type WriteTold =
  | { readonly kind: 'written'; readonly bytes: Uint8Array }
  | { readonly kind: 'fault'; readonly report: string }
