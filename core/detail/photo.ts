import type { Id } from '../geometry'
import type { Side } from '../kinds'

/** A photo of the site at a place of an opening. What it shows lies in the photos of the project, by its digest. */
export type PinnedPhoto = {
  readonly id: Id
  /** `sha256:` and the digest of the JPEG */
  readonly photo: string
  /** where it was taken: a side, and how far along it from the left or lower end; absent: of the whole opening */
  readonly side?: Side
  readonly at_mm?: number
  /** day that it was taken, `2026-03-14` */
  readonly date?: string
  readonly note: string
}

/** What is told of a pinned photo: what it shows, where and when it was taken. */
export type PhotoTold = Omit<PinnedPhoto, 'id' | 'photo'>
