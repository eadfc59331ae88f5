import { z } from 'zod'
import { recentAbout } from '../../core/detail'
import { languages } from '../../core/words'
import { largestFile_bytes } from './read-project'

/** What the window may send with each message. Everything else is refused before it is looked at. */
const bytes = z.instanceof(Uint8Array).refine(it => it.byteLength <= largestFile_bytes, 'larger than 40 MB')

/** A file name, not a path: no separators, no drive, nothing hidden. */
const fileName = z
  .string()
  .min(1)
  .max(200)
  .regex(/^[^/\\:*?"<>|\u0000-\u001f.][^/\\:*?"<>|\u0000-\u001f]*$/u)

const extension = z.string().regex(/^[a-z0-9]{1,8}$/)
const token = z.string().max(64)
const document = z.string().regex(/^[a-z0-9-]{1,64}$/)
/** Sides of a sheet of paper, from a postcard to twice an A0. */
const side_mm = z.number().min(50).max(2500)

export const asked = {
  open: z.tuple([]),
  openRecent: z.tuple([token]),
  // The preload reads it from a dropped file; the page cannot make one up.
  dropped: z.tuple([z.string().min(1).max(5000)]),
  save: z.tuple([token, fileName, bytes]),
  saveAs: z.tuple([fileName, extension, bytes]),
  peek: z.tuple([token]),
  recents: z.tuple([]),
  remember: z.tuple([token, recentAbout]),
  forget: z.tuple([token]),
  forgetAll: z.tuple([]),
  keepCopy: z.tuple([
    z.strictObject({
      document,
      stamp: z.string().max(200),
      name: fileName,
      at: z.iso.datetime({ precision: 3 }),
      text: z.string().max(largestFile_bytes),
      token,
    }),
  ]),
  copies: z.tuple([]),
  letGo: z.tuple([document]),
  print: z.tuple([z.strictObject({ width_mm: side_mm, height_mm: side_mm })]),
  about: z.tuple([]),
  restart: z.tuple([z.enum(['usual', 'safe'])]),
  language: z.tuple([z.enum(languages)]),
  unsaved: z.tuple([z.boolean()]),
  closeAnswered: z.tuple([z.boolean()]),
  ready: z.tuple([]),
} as const
