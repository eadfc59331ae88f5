import { z } from 'zod'
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

export const asked = {
  open: z.tuple([]),
  save: z.tuple([z.string().max(64), fileName, bytes]),
  saveAs: z.tuple([fileName, extension, bytes]),
  unsaved: z.tuple([z.boolean()]),
  closeAnswered: z.tuple([z.boolean()]),
  ready: z.tuple([]),
} as const
