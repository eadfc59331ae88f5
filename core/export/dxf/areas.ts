import { drawHatch, fillOf, hatchOf, type ViewMark } from '../../drawing'
import type { Point } from '../../geometry'
import { add, type Place } from './draft'
import { circle, loopTags, pointsOf, polyline, solid, turned, twiceArea, upwards } from './figures'
import { fillLayer, type On, penLayer, regionLayer, weightOf } from './layers'
import { dotLines, type PatternLine, patternTags, straightLines } from './pattern'
import { point } from './tags'

type Area = Extract<ViewMark, { kind: 'area' }>

/**
 * A hatched area in paper mm: its tint, its hatch with the definition of its own pattern, and its outline beside them,
 * because some readers drop hatches. What no pattern can say (waves, rings, circles, ticks) is drawn as lines.
 */
export const drawArea = (place: Place, area: Area & { readonly hatch: NonNullable<Area['hatch']> }): void => {
  const { draft, scale } = place
  const loops = [area.outline, ...area.holes].map(it => it.map(place.at)).filter(it => twiceArea(it) !== 0)
  const hatched = drawHatch(area, area.hatch, 1)
  const tint = fillOf({ solid: hatched.solid, tint: area.tint }, draft.look.palette)
  const part = area.part === undefined ? {} : { part: area.part }
  if (tint !== undefined) {
    const on = fillLayer(draft, 'tint')
    solid(place, loops, tint, { ...on, own: part })
  }
  const on = penLayer(draft, 'hatch', 'hatch', scale)
  const own: On = { ...on, own: { ...on.own, ...part } }
  const hatch = hatchOf(area.hatch.key)
  const straight = straightLines(hatch, area.hatch, place)
  const dots = dotLines(hatch, area.hatch, place)
  if (hatched.lines.length > 0 && straight.length > 0)
    pattern(place, loops, { name: hatch.key, lines: straight }, own)
  if (hatched.dots.length > 0 && dots)
    pattern(
      place,
      loops,
      { name: `${hatch.key}_dots`, lines: dots.lines },
      { ...own, own: { ...own.own, weight: weightOf(dots.diameter_mm) } },
    )
  if (straight.length === 0)
    for (const line of hatched.lines) polyline(place, pointsOf(line, place), false, own)
  for (let at = 0; at + 2 < hatched.rings.length; at += 3)
    circle(
      place,
      place.at([hatched.rings[at] ?? 0, hatched.rings[at + 1] ?? 0]),
      (hatched.rings[at + 2] ?? 0) / scale,
      own,
    )
  // what is enlarged has its regions in model space
  if (area.part === undefined || draft.enlarged !== undefined) return
  const region = regionLayer(draft)
  loops.forEach((loop, at) => polyline(place, turned(loop, at === 0), true, { ...region, own: part }))
}

const pattern = (
  place: Place,
  loops: readonly (readonly Point[])[],
  { name, lines }: { readonly name: string; readonly lines: readonly PatternLine[] },
  on: On,
): void => {
  add(place, 'HATCH', on, [
    [100, 'AcDbHatch'],
    ...point(10, [0, 0]),
    ...upwards,
    [2, `JW_${name}`.toUpperCase()],
    [70, 0],
    [71, 0],
    ...loopTags(loops),
    [75, 0],
    [76, 2],
    ...patternTags(lines),
    [98, 0],
  ])
}
