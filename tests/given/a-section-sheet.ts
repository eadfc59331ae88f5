import {
  type Drawing,
  drawSection,
  type ListedPart,
  type Palette,
  sizeOnPaper_mm,
  type View,
} from '../../core/drawing'
import { material } from '../../core/materials'
import { type Language, words } from '../../core/words'
import { aSection } from './a-section'

const part = (
  number: number,
  id: string,
  names: readonly [en: string, de: string],
  role: ListedPart['role'],
  more: Partial<ListedPart> = {},
): ListedPart => ({
  id,
  number: `${number}`,
  of: [id],
  name: words(...names),
  note: words('', ''),
  assumed: false,
  role,
  ...more,
})

/** The parts of `aSection`, outside to inside. */
export const sectionParts: readonly ListedPart[] = [
  part(1, 'p1', ['Render', 'Außenputz'], 'layer'),
  part(2, 'p2', ['Mineral wool', 'Mineralwolle'], 'layer'),
  part(3, 'p3', ['Sand-lime masonry', 'Kalksandstein'], 'layer'),
  part(4, 's1', ['Tape', 'Dichtband'], 'seal'),
  part(5, 's2', ['Foam', 'Schaum'], 'seal'),
  part(6, 's3', ['Membrane', 'Folie'], 'seal', { line: 'membrane-inner' }),
  part(7, 'x1', ['Frame screw', 'Rahmenschraube'], 'fixing'),
  part(8, 'f1.frame', ['Frame', 'Rahmen'], 'frame'),
  part(9, 'f1.sash', ['Sash', 'Flügel'], 'frame', { of: ['f1.sash', 'f1.bead'] }),
  part(10, 'f1.glazing', ['Glazing', 'Verglasung'], 'glazing'),
  part(11, 'p4', ['Plaster', 'Innenputz'], 'layer'),
]

/** How a material of the library is hatched. */
export const hatchOfMaterial = (id: string): string => {
  const found = material(id)
  if (found === undefined) throw new Error(`no material ${id}`)
  return found.hatch
}

type Wish = {
  readonly language?: Language
  readonly palette?: Palette
  readonly profile?: string
  readonly joint_mm?: number
  readonly turn_deg?: View['turn_deg']
  readonly mirrored?: boolean
  readonly scale?: number
}

/** How `aSection` is drawn: its whole depth, with sizes and numbers. */
export const aSectionLook = ({
  language = 'en',
  turn_deg = 0,
  mirrored = false,
  scale = 0.5,
}: Wish = {}) => ({
  parts: sectionParts,
  hatchOf: hatchOfMaterial,
  sizes: { joint: { words: '12 ±3', field: { field: 'joint.planned', part: 'j1' } } },
  window: [
    [-80, 0],
    [160, 320],
  ] as const,
  scale,
  language,
  at: [45, 45] as const,
  turn_deg,
  mirrored,
  show: { sizes: true, numbers: true },
})

/** `aSection` drawn on a sheet of its own. */
export const aSectionSheet = (wish: Wish = {}): Drawing => {
  const look = aSectionLook(wish)
  const section = aSection({
    ...(wish.profile && { profile: wish.profile }),
    ...(wish.joint_mm && { joint_mm: wish.joint_mm }),
  })
  const [width, height] = sizeOnPaper_mm(look)
  return {
    size_mm: [width + 90, height + 90],
    language: look.language,
    palette: wish.palette ?? 'colour',
    title: 'A jamb',
    says: 'A jamb with external insulation',
    materials: new Map([['p2', 'mineral-wool']]),
    marks: [drawSection(section, look).view],
  }
}
