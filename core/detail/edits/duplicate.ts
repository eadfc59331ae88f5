import { z } from 'zod'
import { ok, refused } from '../../units'
import { words } from '../../words'
import type { EditKind } from '../edit'
import { entryAt, fixingOf, layerOf, openingsWith, zonesOf } from '../find'
import { pieceOf } from '../piece'
import { withDuplicatedOpening } from './openings'
import { paste } from './paste'

/** Puts the same layer, fixing or opening beside one. A plane holds one seal: it is copied to another joint instead. */
export const duplicate: EditKind<'duplicate'> = {
  kind: 'duplicate',
  schema: z.strictObject({ kind: z.literal('duplicate'), part: z.string() }),
  apply: (project, { part }) => {
    const whole = entryAt(project.openings, part)
    if (whole) return ok(withDuplicatedOpening(project, whole))
    const layer = layerOf(project, part)
    const opening = layer ? openingsWith(project, layer.wall.id)[0] : fixingOf(project, part)?.opening
    const place = zonesOf(project).find(it => it.opening === opening?.id)
    const piece = place && pieceOf(project, place, part)
    if (place === undefined || piece === undefined)
      return refused({
        at: part,
        say: words(
          'only layers and fixings stand twice: copy this into another joint',
          'nur Schichten und Befestigungen stehen doppelt: dies in eine andere Fuge kopieren',
        ),
      })
    const layers = layer?.wall.layers ?? []
    const before = layers[layers.findIndex(it => it.id === part) + 1]
    return paste.apply(project, {
      kind: 'paste',
      piece,
      into: place.zone.id,
      ...(before === undefined ? {} : { before: before.id }),
    })
  },
}
