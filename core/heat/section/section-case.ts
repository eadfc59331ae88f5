import { type Id, type Outline, type Point, type Region, areaOf } from '../../geometry'
import type { Face, Section } from '../../section'
import { type Problem, type Result, ok, refused } from '../../units'
import { filled, words } from '../../words'
import type { Body, Foil, HeatCase, Stretch, Surface } from '../case'
import { foilConductance_W_K } from '../si'
import { airLayerConductivity_W_mK, layerProportion } from './air-layer'
import { cavityConductivity_W_mK } from './cavity'
import { reducedZones } from './reduced-zone'
import { type Climate, type Purpose, film_W_m2K } from './surface-film'
import { splitAtThroats } from './throat'

/** What heat needs to know of a material. */
export type Conductor = { readonly lambda_W_mK: number; readonly emissivity: number }

/** How a section is looked at. `materialOf` is what a part is made of: as declared, else as its material is. */
export type SectionView = {
  readonly climate: Climate
  readonly purpose: Purpose
  readonly materialOf: (id: Id, part: Id) => Conductor | undefined
}

/** A section as a heat case. `parts` and `faces` say, body by body and surface by surface, what they are in the section. */
export type SectionCase = {
  readonly case: HeatCase
  readonly parts: readonly Id[]
  readonly faces: readonly (Pick<Face, 'to' | 'of'> & { readonly isReduced: boolean })[]
}

/** Foils that conduct this well are metal: plastics and paper stay below 1 W/(mK), metals lie above 10. Ours. */
const metal_W_mK = 5

/** Emissivity where a cavity borders on another cavity (EN ISO 10077-2, published). */
const usualEmissivity = 0.9

/**
 * Turns a section into a heat case: materials by their conductivity, air by its equivalent one (cavities split at
 * throats), air that is open to a side as part of that side, metal lines as foils, faces with the films of the purpose.
 * Problems: materials that are not known.
 */
export const sectionCase = (section: Section, view: SectionView): Result<SectionCase> => {
  const problems: Problem[] = []
  const neighbours = neighbourhood(section.regions, view, problems)
  const isOpen = (it: Region) => it.fill.kind === 'air' && it.fill.vented === 'open'
  const solid = section.regions.filter(it => !isOpen(it))
  const bodies = solid.flatMap(region => bodiesOf(region, view, neighbours))
  const open = section.regions.filter(isOpen)
  const openEdges = new Set(open.flatMap(it => edgesOf(it).map(edgeKey)))
  const surfaces = [
    ...section.faces.flatMap(face => faceSurfaces(face, view, openEdges)),
    ...open.map(region => openSurface(region, section, openEdges, view)),
  ].filter(it => it.surface.edges.length > 0)
  const [first, ...more] = problems
  if (first) return refused(first, ...more)
  return ok({
    case: {
      name: `${section.side} ${section.zone}`,
      bodies: bodies.map(it => it.body),
      surfaces: surfaces.map(it => it.surface),
      foils: section.lines
        .filter(line => line.lambda_W_mK >= metal_W_mK)
        .map((line): Foil => ({
          name: line.id,
          path: line.path,
          conductance_W_K: foilConductance_W_K(line.thickness_mm, line.lambda_W_mK),
        })),
      probes: {},
    },
    parts: bodies.map(it => it.part),
    faces: surfaces.map(it => it.face),
  })
}

type PartBody = { readonly body: Body; readonly part: Id }
type FaceSurface = { readonly surface: Surface; readonly face: SectionCase['faces'][number] }
type Neighbours = ReadonlyMap<string, number>

const edgesOf = (region: Region): readonly Stretch[] => [region.outline, ...region.holes].flatMap(ringEdges)

const ringEdges = (ring: Outline): readonly Stretch[] =>
  ring.map((from, i): Stretch => [from, ring[(i + 1) % ring.length] ?? from])

const edgeKey = ([a, b]: Stretch): string => `${a[0]},${a[1]};${b[0]},${b[1]}`

/** The emissivity that each directed edge shows to the region on its other side. */
const neighbourhood = (
  regions: readonly Region[],
  { materialOf }: SectionView,
  problems: Problem[],
): Neighbours => {
  const seen = new Map<string, number>()
  for (const region of regions) {
    if (region.fill.kind !== 'material') continue
    const material = materialOf(region.fill.material, region.part)
    if (!material) problems.push({ at: region.part, say: filled(unknownMaterial, region.fill.material) })
    else for (const [a, b] of edgesOf(region)) seen.set(edgeKey([b, a]), material.emissivity)
  }
  return seen
}

const bodiesOf = (region: Region, view: SectionView, neighbours: Neighbours): readonly PartBody[] => {
  if (region.fill.kind === 'material') {
    const lambda_W_mK = view.materialOf(region.fill.material, region.part)?.lambda_W_mK ?? 0
    return [
      {
        part: region.part,
        body: { name: region.id, outline: region.outline, holes: region.holes, lambda_W_mK },
      },
    ]
  }
  const vented = region.fill.vented === 'slightly' ? 'slightly' : 'closed'
  const outlines = region.holes.length === 0 ? splitAtThroats(region.outline) : [region.outline]
  return outlines.map(outline => ({
    part: region.part,
    body: {
      name: region.id,
      outline,
      holes: region.holes,
      lambda_W_mK: airConductivity_W_mK(outline, region.holes, vented, neighbours),
    },
  }))
}

/** Heat goes along y, from inside to outside; an air gap ten times as broad as deep is a layer, anything else a cavity. */
const airConductivity_W_mK = (
  outline: Outline,
  holes: readonly Outline[],
  vented: 'closed' | 'slightly',
  neighbours: Neighbours,
): number => {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)]
  const across_mm = Math.max(...xs) - Math.min(...xs)
  const along_mm = Math.max(...ys) - Math.min(...ys)
  const area_mm2 = areaOf(outline) + holes.reduce((sum, hole) => sum + areaOf(hole), 0)
  const isLayer =
    vented === 'closed' && across_mm >= layerProportion * along_mm && area_mm2 > 0.99 * across_mm * along_mm
  if (isLayer) return airLayerConductivity_W_mK(along_mm, 'horizontal')
  const emissivity = [
    sideEmissivity(outline, neighbours, 1),
    sideEmissivity(outline, neighbours, -1),
  ] as const
  return cavityConductivity_W_mK({ along_mm, across_mm, area_mm2, emissivity, vented })
}

/** Mean emissivity of the edges on the outer (1) or inner (-1) side of a cavity, each by its breadth across the heat flow. */
const sideEmissivity = (outline: Outline, neighbours: Neighbours, side: 1 | -1): number => {
  let [sum, breadth_mm] = [0, 0]
  for (const edge of ringEdges(outline)) {
    const across_mm = side * (edge[1][0] - edge[0][0])
    if (across_mm <= 0) continue
    sum += across_mm * (neighbours.get(edgeKey(edge)) ?? usualEmissivity)
    breadth_mm += across_mm
  }
  return breadth_mm > 0 ? sum / breadth_mm : usualEmissivity
}

/** The surfaces of a face: one, or two where zones of reduced radiation lie on it. Cuts are adiabatic. */
const faceSurfaces = (
  face: Face,
  view: SectionView,
  openEdges: ReadonlySet<string>,
): readonly FaceSurface[] => {
  if (face.to === 'cut') return []
  const zones =
    face.to === 'inside' && view.purpose === 'frame'
      ? reducedZones(face.path)
      : pathEdges(face.path).map(([from, to]) => ({ from, to, isReduced: false }))
  return [false, true].flatMap(isReduced => {
    const edges = zones
      .filter(it => it.isReduced === isReduced && !openEdges.has(edgeKey([it.from, it.to])))
      .map((it): Stretch => [it.from, it.to])
    if (edges.length === 0) return []
    return [
      { face: { to: face.to, of: face.of, isReduced }, surface: surfaceOf(face, isReduced, edges, view) },
    ]
  })
}

const pathEdges = (path: readonly Point[]): readonly Stretch[] =>
  path.slice(1).map((to, i): Stretch => [path[i] ?? to, to])

const surfaceOf = (
  face: Pick<Face, 'to' | 'of'>,
  isReduced: boolean,
  edges: readonly Stretch[],
  view: SectionView,
): Surface => ({
  name: face.to,
  h_W_m2K: film_W_m2K(face, view.purpose, isReduced),
  air_C:
    face.to === 'inside'
      ? view.climate.inside_C
      : face.to === 'ground'
        ? view.climate.ground_C
        : view.climate.outside_C,
  edges,
  mayBeCovered: true,
})

/** Air that is open to a side: what it touches belongs to that side (EN ISO 10077-2, from memory). */
const openSurface = (
  region: Region,
  section: Section,
  openEdges: ReadonlySet<string>,
  view: SectionView,
): FaceSurface => {
  const own = new Set(edgesOf(region).map(edgeKey))
  const touched = section.faces.find(
    it => it.to !== 'cut' && pathEdges(it.path).some(edge => own.has(edgeKey(edge))),
  )
  const outer = new Set(section.faces.flatMap(it => pathEdges(it.path)).map(edgeKey))
  const face = { to: touched?.to ?? 'outside', of: 'frame', isReduced: false } as const
  const edges = edgesOf(region)
    .filter(edge => !outer.has(edgeKey(edge)) && !openEdges.has(edgeKey([edge[1], edge[0]])))
    .map(([a, b]): Stretch => [b, a])
  return { face, surface: surfaceOf(face, false, edges, view) }
}

const unknownMaterial = words('the material “{0}” is not known', 'der Baustoff „{0}“ ist nicht bekannt')
