import { layerDepths, secondPlanes } from '../../detail'
import { words } from '../../words'
import { placed, type Reading, statedThere } from '../reading'
import { hasSill, sillId } from '../readings/sill'
import { isBaseOf } from '../readings/wall'
import { wordOf } from '../remedies/state'
import { rule } from '../rule'

const secondPlane = statedThere(
  { id: 'sill.second-plane', name: words('Second drained plane', 'Zweite Dichtebene') },
  sillId,
  at => at.opening.sill?.secondPlane,
)

/** What is below the sill: timber and wood fibre rot where water gets at them. */
const below: Reading<'timber' | 'wood-fibre' | 'other'> = placed({
  id: 'wall.below-sill',
  name: words('Wall below the sill', 'Wand unter der Fensterbank'),
  compute: at => {
    if (isBaseOf(at, ['timber'])) return 'timber'
    return layerDepths(at.wall).some(it => it.layer.material === 'wood-fibre') ? 'wood-fibre' : 'other'
  },
})

/** Below the outside sill a second plane drains what gets through it. */
export const secondPlaneRule = rule({
  id: 'second-plane',
  about: 'sill',
  title: words('Second drained plane below the sill', 'Zweite Dichtebene unter der Fensterbank'),
  says: words(
    'Below the outside sill a tray or membrane falls outwards, is turned up at the reveals and open to the front.',
    'Unter der Fensterbank liegt eine Wanne oder Folie mit Gefälle, an den Leibungen aufgekantet und nach vorn offen.',
  ),
  why: words(
    'Joints of sills leak sooner or later; the second plane keeps that water out of the wall.',
    'Anschlüsse von Fensterbänken werden früher oder später undicht; die zweite Ebene hält dieses Wasser aus der Wand.',
  ),
  reads: { plane: secondPlane, wall: below },
  limit: 'second-plane',
  band: [],
  applies: hasSill,
  ask: ({ wall }) => [{ given: { wall } }],
  compare: ({ plane }) => ({
    kind: 'presence',
    there: plane === 'none' ? [] : [named[plane]],
    missing: plane === 'none' ? [words('a second drained plane', 'eine zweite Dichtebene')] : [],
  }),
  sum: () => [],
  *remedies(_known, _then, at) {
    for (const one of secondPlanes)
      if (one !== 'none') yield* wordOf(at.project, 'sill.second-plane', sillId(at), one)
  },
  examples: [
    {
      when: words('a tray on masonry', 'eine Wanne auf Mauerwerk'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { plane: 'tray', wall: 'other' },
      verdict: 'met',
    },
    {
      when: words('none on masonry in Germany', 'keine auf Mauerwerk in Deutschland'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { plane: 'none', wall: 'other' },
      verdict: 'advice',
    },
    {
      when: words('none on a timber wall', 'keine auf einer Holzwand'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { plane: 'none', wall: 'timber' },
      verdict: 'not-met',
    },
    {
      when: words('none in Austria', 'keine in Österreich'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { plane: 'none', wall: 'other' },
      verdict: 'not-met',
    },
    {
      when: words('in Britain the wall design says', 'in Großbritannien sagt es der Wandentwurf'),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { plane: 'none', wall: 'other' },
      verdict: 'refer',
    },
  ],
})

const named = { tray: words('tray', 'Wanne'), membrane: words('membrane', 'Folie') } as const
