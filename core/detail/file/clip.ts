import { z } from 'zod'
import { ok, type Problem, refused, type Result } from '../../units'
import { words } from '../../words'
import type { Piece } from '../piece'
import { overCaps } from './caps'
import { parsed, refusedBy } from './open'
import { pieceSchema } from './schema'

/** How a copied piece names itself, so that text from anywhere else is known as such. */
const format = { name: 'jambwright-piece', version: 1 } as const

const clip = z.strictObject({
  format: z.strictObject({ name: z.literal(format.name), version: z.literal(format.version) }),
  piece: pieceSchema,
})

/** A piece as text for the clipboard: between two files, or two windows. */
export const writeClip = (piece: Piece): string => JSON.stringify({ format, piece }, undefined, 1)

/** Whether a text says that it is a piece of ours. Reading it may still find it damaged. */
export const isClip = (text: string): boolean => text.slice(0, 200).includes(`"${format.name}"`)

/** Reads a piece from text of the clipboard, which may be anything at all. Every problem is said with its place; nothing is thrown. */
export const readClip = (text: string): Result<Piece> => {
  if (!isClip(text)) return refused(notOurs)
  const cap = overCaps(text)
  if (cap) return refused(cap)
  const raw = parsed(text)
  if (!raw.ok) return raw
  const found = clip.safeParse(raw.value)
  return found.success ? ok(found.data.piece) : refusedBy(found.error)
}

const notOurs: Problem = {
  at: 'clipboard',
  say: words('what was copied is no part of a joint', 'das Kopierte ist kein Teil einer Fuge'),
}
