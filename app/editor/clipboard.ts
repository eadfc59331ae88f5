import { type Edit, type Piece, type Project, pieceOf, readClip, wallOf, writeClip } from '../../core/detail'
import type { Id } from '../../core/geometry'
import { ok, type Result } from '../../core/units'
import { type Words, words } from '../../core/words'
import { placeOf } from './place'
import { selectableIn } from './selectable'
import type { Action, Session } from './session'

/** The selected part as text for the clipboard; nothing where nothing is selected that can be copied. */
export const copied = ({ project, view, selection }: Session): string | undefined => {
  const [part] = selection
  const piece = part === undefined ? undefined : pieceOf(project, placeOf(project, view), part)
  return piece && writeClip(piece)
}

/**
 * What pasting a text does here: a layer goes behind the selected one, everything else to where it belongs in the cut
 * that is looked at. Problems: the text is no piece of ours, or a damaged one.
 */
export const pasting = ({ project, view, selection }: Session, text: string): Result<Action> => {
  const piece = readClip(text)
  if (!piece.ok) return piece
  const place = placeOf(project, view)
  const layers = wallOf(project, place.opening).layers
  const behind = layers.findIndex(it => it.id === selection[0])
  const next = behind < 0 ? undefined : layers[behind + 1]
  const edit: Edit = {
    kind: 'paste',
    piece: piece.value,
    into: place.zone.id,
    ...(piece.value.kind === 'layer' && next ? { before: next.id } : {}),
  }
  return ok({ kind: 'edit', edits: [edit], says: pasteName[piece.value.kind] })
}

const pasteName: Readonly<Record<Piece['kind'], Words>> = {
  layer: words('Paste a layer', 'Schicht einfügen'),
  seal: words('Paste a seal', 'Dichtung einfügen'),
  joint: words('Paste a joint', 'Fuge einfügen'),
  fixing: words('Paste a fixing', 'Befestigung einfügen'),
  sill: words('Paste a sill', 'Fensterbank einfügen'),
  threshold: words('Paste a threshold', 'Schwelle einfügen'),
  frame: words('Paste a frame', 'Rahmen einfügen'),
  wall: words('Paste a wall', 'Wand einfügen'),
}

/** The parts that a project has and the one before it had not: what was inserted, filled or pasted. */
export const freshParts = (before: Project, after: Project): readonly Id[] => {
  if (before === after) return []
  const had = selectableIn(before)
  return [...selectableIn(after)].filter(it => !had.has(it))
}
