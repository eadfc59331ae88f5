import { areaPaths, difference, FillRule, type Paths64, union } from 'clipper2-ts'
import { frameOf, type Project, type ZonePlace } from '../../core/detail'
import { areaOf, grid_mm, type Outline, type Point, type Region } from '../../core/geometry'
import { layoutOf, type Section } from '../../core/section'
import { paintedParts } from '../../core/section/cut'

const netArea = (it: Region): number => [it.outline, ...it.holes].reduce((sum, loop) => sum + areaOf(loop), 0)
const keyOf = (part: string, fill: Region['fill']): string =>
  `${part} ${fill.kind === 'air' ? fill.vented : fill.material}`
const loopsOf = ({ outline, holes }: Region): readonly Outline[] => [outline, ...holes]
const halfKey = (a: Point, b: Point): string => `${a[0]},${a[1]};${b[0]},${b[1]}`

/** Every directed edge of the regions, and how often it occurs. */
const halvesOf = ({ regions }: Section): ReadonlyMap<string, number> => {
  const halves = new Map<string, number>()
  for (const loop of regions.flatMap(loopsOf)) {
    for (let i = 0; i < loop.length; i++) {
      const key = halfKey(loop[i] ?? [0, 0], loop[(i + 1) % loop.length] ?? [0, 0])
      halves.set(key, (halves.get(key) ?? 0) + 1)
    }
  }
  return halves
}

const stretchesOf = (path: readonly Point[]): readonly (readonly [Point, Point])[] =>
  path.slice(1).map((b, i) => [path[i] ?? b, b] as const)

/** What is wrong with how regions, faces and lines of a section meet; nothing where they tile it. */
export const untiled = (section: Section): readonly string[] => {
  const wrong: string[] = []
  const halves = halvesOf(section)
  const onFace = new Set(section.faces.flatMap(face => stretchesOf(face.path).map(([a, b]) => halfKey(a, b))))
  for (const [half, count] of halves) {
    const at = half.indexOf(';')
    const back = `${half.slice(at + 1)};${half.slice(0, at)}`
    if (count !== 1) wrong.push(`${half} bounds ${count} regions`)
    if (halves.has(back) === onFace.has(half)) wrong.push(`${half} is neither shared nor one face's`)
  }
  for (const line of section.lines) {
    for (const [a, b] of stretchesOf(line.path)) {
      if (!halves.has(halfKey(a, b)) && !halves.has(halfKey(b, a)))
        wrong.push(`${line.id} leaves all edges at ${halfKey(a, b)}`)
    }
  }
  const looks = section.faces
    .map(face => face.to)
    .filter((to, i, all) => to !== 'cut' && all[i - 1] !== to)
    .join()
  const wanted = section.levels ? 'outside,inside,ground' : 'outside,inside'
  if (looks !== wanted) wrong.push(`looks ${looks}`)
  return wrong
}

/** Places of a section that do not lie on the grid. */
export const offGrid = ({ regions }: Section): readonly number[] =>
  regions
    .flatMap(loopsOf)
    .flat(2)
    .filter(at => Math.abs(at / grid_mm - Math.round(at / grid_mm)) > 1e-3)

/** Area of each part and filling, in mm². */
export const areasIn = ({ regions }: Section): ReadonlyMap<string, number> => {
  const found = new Map<string, number>()
  for (const region of regions) {
    const key = keyOf(region.part, region.fill)
    found.set(key, (found.get(key) ?? 0) + netArea(region))
  }
  return found
}

/** What of two sets of areas differs by more than a share of all that the first ones are together. */
export const differing = (
  found: ReadonlyMap<string, number>,
  expected: ReadonlyMap<string, number>,
  share: number,
): readonly string[] => {
  const domain = [...found.values()].reduce((sum, area) => sum + area, 0)
  return [...expected].flatMap(([key, area]) =>
    Math.abs((found.get(key) ?? 0) - area) < share * domain ? [] : [`${key}: ${found.get(key)} is ${area}`],
  )
}

/** The same areas by a general boolean library: the outlines in their order, each less all that is painted after it. */
export const areasByLibrary = (
  project: Project,
  place: ZonePlace,
  at: { readonly width_mm: number; readonly through?: 'fixing' },
): ReadonlyMap<string, number> => {
  const areas = new Map<string, number>()
  const painted = paintedParts(layoutOf(project, place, at.width_mm), at.through).parts.map(it => ({
    label: it.label,
    paths: asPaths(it.outline),
    reach: reachOf(it.outline),
  }))
  painted.forEach(({ label, paths, reach }, i) => {
    const over = painted.slice(i + 1).filter(it => meet(reach, it.reach))
    const covers: Paths64 = over.flatMap(it => it.paths)
    const key = keyOf(label.part, label.fill)
    const left = areaPaths(difference(paths, covers, FillRule.NonZero)) * grid_mm * grid_mm
    areas.set(key, (areas.get(key) ?? 0) + left)
  })
  // ground that the outlines enclose without covering it belongs to the gaps of the element
  const all = union(painted.flatMap(it => it.paths), [], FillRule.NonZero) // prettier-ignore
  const holes = all.filter(it => areaPaths([it]) < 0)
  const gaps = keyOf(`${frameOf(project, place.opening).id}/gasket`, { kind: 'air', vented: 'closed' })
  areas.set(gaps, (areas.get(gaps) ?? 0) - areaPaths(holes) * grid_mm * grid_mm)
  return areas
}

type Reach = readonly [x0: number, y0: number, x1: number, y1: number]

const reachOf = (outline: Outline): Reach => {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)]
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)]
}

const meet = (a: Reach, b: Reach): boolean => a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3]

const asPaths = (outline: Outline): Paths64 => [
  outline.map(([x, y]) => ({ x: Math.round(x / grid_mm), y: Math.round(y / grid_mm) })),
]
