import type { Stated, Unit } from '../../units'
import { type Words, words } from '../../words'
import { allowedThickness } from '../allowed/thickness'
import { materialOf } from '../edits/materials'
import type { Known } from '../field'
import { layerOf } from '../find'
import type { Layer, Project } from '../model'
import { numberField } from './number-field'
import { withLayer } from './tables'

export const layerThickness = numberField({
  id: 'layer.thickness',
  name: words('Thickness', 'Dicke'),
  of: 'layer',
  unit: 'mm',
  read: (project, layer) => layerOf(project, layer)?.layer.thickness_mm,
  allowed: allowedThickness,
  write: (project, layer, to) =>
    withLayer(project, layer, it => ({ ...it, thickness_mm: to ?? it.thickness_mm })),
})

type Declared = 'lambda_W_mK' | 'muDry' | 'muWet'

/** What a product declares of a layer. Where nothing is declared, what the library says of its material. */
const declared = (it: {
  readonly key: Declared
  readonly id: string
  readonly name: Words
  readonly unit: Unit
  readonly range: readonly [min: number, max: number]
  readonly because: Words
  readonly ofMaterial: (project: Project, layer: Layer) => number | undefined
}) =>
  numberField({
    id: it.id,
    name: it.name,
    of: 'layer',
    unit: it.unit,
    read: (project, layer) => layerOf(project, layer)?.layer[it.key],
    fallback: (project, layer): Known<number> | undefined => {
      const found = layerOf(project, layer)?.layer
      const value = found && it.ofMaterial(project, found)
      return value === undefined
        ? undefined
        : { value, basis: 'specified', origin: 'material', because: library }
    },
    allowed: () => ({ bounds: { unit: it.unit, min: it.range[0], max: it.range[1] }, because: it.because }),
    write: (project, layer, to) => withLayer(project, layer, one => withDeclared(one, it.key, to)),
  })

const library = words('as the library of materials has it', 'wie in der Baustoffsammlung')

const withDeclared = (layer: Layer, key: Declared, to: Stated<number> | undefined): Layer => {
  const { [key]: _, ...rest } = layer
  // Only a declaration is left out: all that a layer needs stays.
  return to === undefined ? (rest as Layer) : { ...layer, [key]: to }
}

/** From evacuated panels to copper: what a conductivity of a layer can be (EN ISO 10456 lists 0.02 to 380). */
export const layerLambda = declared({
  key: 'lambda_W_mK',
  id: 'layer.lambda',
  name: words('Conductivity λ', 'Wärmeleitfähigkeit λ'),
  unit: 'W_mK',
  range: [0.003, 400],
  because: words('from evacuated panel to metal', 'von Vakuumdämmung bis Metall'),
  ofMaterial: (project, layer) => materialOf(project, layer.material)?.lambda_W_mK,
})

/** A factor of 1 is air; films of metal count as a million (EN ISO 10456 writes them as infinite). */
const mu = { unit: 'one', range: [1, 10_000_000], because: words('air is 1', 'Luft ist 1') } as const

export const layerMuDry = declared({
  ...mu,
  key: 'muDry',
  id: 'layer.mu-dry',
  name: words('Vapour factor µ, dry', 'Dampfzahl µ, trocken'),
  ofMaterial: (project, layer) => materialOf(project, layer.material)?.mu?.dry,
})

export const layerMuWet = declared({
  ...mu,
  key: 'muWet',
  id: 'layer.mu-wet',
  name: words('Vapour factor µ, humid', 'Dampfzahl µ, feucht'),
  ofMaterial: (project, layer) => materialOf(project, layer.material)?.mu?.wet,
})

export const edgeWidth = numberField({
  id: 'layer.edge-width',
  name: words('Width of what closes it', 'Breite dessen, was sie schließt'),
  of: 'layer',
  unit: 'mm',
  has: (project, layer) => layerOf(project, layer)?.layer.edge !== undefined,
  read: (project, layer) => layerOf(project, layer)?.layer.edge?.width_mm,
  allowed: () => ({
    bounds: { unit: 'mm', min: 5, max: 400 },
    because: words('from the opening into the wall', 'von der Öffnung in die Wand'),
  }),
  write: (project, layer, to) =>
    withLayer(project, layer, it => (it.edge && to ? { ...it, edge: { ...it.edge, width_mm: to } } : it)),
})
