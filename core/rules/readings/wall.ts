import { type Layer, layerDepths, materialOf, type Wall, wallDepths } from '../../detail'
import { type AnchorBase, anchorBaseName, isMasonry, isWeakBase } from '../../kinds'
import { type Material, material } from '../../materials'
import { filled, words } from '../../words'
import type { Place } from '../place'
import { placed, type Reading } from '../reading'
import type { Caution } from '../rule-shape'

/** What fixings are set into, and whether anybody has stated its strength. */
export type Base = { readonly base: AnchorBase | 'other'; readonly isKnown: boolean }

/** The material that a layer shows at the opening: what closes it there, else its own. */
export const materialAtFlank = ({ tables, project }: Place, layer: Layer): Material | undefined =>
  materialOf(tables ?? project, layer.edge?.material ?? layer.material)

/** The base of fixings: what the bearing layer is at the flank. Missing while no layer is said to bear. */
export const anchorBase: Reading<Base> = placed({
  id: 'wall.base',
  name: words('Base of the fixings', 'Verankerungsgrund'),
  compute: at => {
    if (!hasBearing(at.wall)) return undefined
    const found = materialAtFlank(at, wallDepths(at.wall).bearing.layer)
    // A copy that a project keeps may be older than this class; what a brick is does not change.
    const base = found && (found.base ?? material(found.id)?.base)
    const isKnown = !base || !isMasonry(base) || at.opening.asked?.baseKnown?.value === 'yes'
    return { base: base ?? 'other', isKnown }
  },
  beneath: at => (hasBearing(at.wall) ? [] : [{ field: 'wall.duties', part: at.wall.id, stated: undefined }]),
})

const hasBearing = (wall: Wall): boolean => wall.layers.some(it => it.duties.includes('bearing'))

/** Whether a place has a base of that kind; a base that nobody knows is of none. */
export const isBaseOf = (at: Place, bases: readonly AnchorBase[]): boolean => {
  const base = anchorBase.placed?.compute(at)?.base
  return base !== undefined && base !== 'other' && bases.includes(base)
}

/** In weak masonry, and in masonry of unknown strength, no figure is plainly met. */
export const weakBase = ({ base, isKnown }: Base): Caution | undefined => {
  if (base === 'other') return undefined
  if (isWeakBase(base))
    return {
      to: filled(
        words('whoever assesses fixings: {0} holds little', 'wer die Befestigung bemisst: {0} trägt wenig'),
        anchorBaseName[base],
      ),
      handOver: [assessment],
    }
  return isKnown
    ? undefined
    : {
        to: words(
          'whoever assesses fixings: nobody has stated how strong the masonry is',
          'wer die Befestigung bemisst: die Festigkeit des Mauerwerks ist nicht genannt',
        ),
        handOver: [pullTests],
      }
}

const assessment = words(
  'assessment of the fixing for this masonry',
  'Zulassung der Befestigung für dieses Mauerwerk',
)
const pullTests = words('strength of the masonry, or pull tests on site', 'Festigkeit des Mauerwerks oder Auszugversuche am Bau') // prettier-ignore

/** Layers that lie on the flank from one depth to another, outside to inside. */
export const layersBetween = (wall: Wall, from_mm: number, to_mm: number): readonly Layer[] =>
  layerDepths(wall)
    .filter(it => Math.min(it.to_mm, to_mm) - Math.max(it.from_mm, from_mm) > slight_mm)
    .map(it => it.layer)

/** Less than this is no support, and no lack of it: ours. */
const slight_mm = 0.5

/** How insulation stands to the bearing layer: before it, or the bearing layer is the wall. */
export const wallKind = (wall: Wall): 'one-leaf' | 'insulated' | 'other' => {
  const { before, behind } = wallDepths(wall)
  const insulates = (layers: typeof before) => layers.some(it => it.layer.duties.includes('insulating'))
  if (insulates(before)) return 'insulated'
  return insulates(behind) ? 'other' : 'one-leaf'
}
