import { type Ink, type ViewMark } from '../../drawing'
import type { Point } from '../../geometry'
import { writeNumber } from '../../units'
import { add, addSpace, type Draft, type Place, type SizeStyle } from './draft'
import { circle, drawInk, styles } from './figures'
import { penLayer } from './layers'
import { paragraphWords, plainWords } from './lettering'
import { point, type Tags } from './tags'

/** The style of sizes and leaders at a scale. Words, strokes and gaps are those of the sheet. */
const styleOf = (draft: Draft, scale: number, end: SizeStyle['end']): string => {
  const ratio = scale <= 1 ? `1-${Number((1 / scale).toFixed(3))}` : `${Number(scale.toFixed(3))}-1`
  const times = draft.enlarged === undefined ? 1 : 1 / draft.enlarged
  const name = `JW-${ratio}${times === 1 ? '' : `-TIMES-${Number(times.toFixed(3))}`}${end === 'arrow' ? '-ARROW' : ''}`
  if (!draft.styles.has(name)) draft.styles.set(name, { name, scale, end, ...(times !== 1 && { times }) })
  return name
}

type Size = Extract<ViewMark, { kind: 'dimension' }>

/**
 * A size in paper mm: a real dimension that measures the drawing, with the block that shows it as the sheet does. Its
 * words stand for the measure only where they say more than it: a range, or a tenth that makes a chain add up.
 */
export const drawSize = (place: Place, size: Size, inks: readonly Ink[]): void => {
  const { draft, scale } = place
  const block = addSpace(
    draft,
    `*D${draft.blocks.filter(it => it.name.startsWith('*D')).length + 1}`,
    'block',
  )
  for (const ink of inks) drawInk({ ...place, space: block }, ink, size.layer, 'text')
  const [from, to] = [place.at(size.from), place.at(size.to)]
  const span = Math.hypot(to[0] - from[0], to[1] - from[1])
  const along: Point = [(to[0] - from[0]) / span, (to[1] - from[1]) / span]
  const line = place.at(size.line)
  const past = (to[0] - line[0]) * along[0] + (to[1] - line[1]) * along[1]
  const foot: Point = [line[0] + past * along[0], line[1] + past * along[1]]
  const corners = { ...place, space: block }
  for (const at of [from, to, foot])
    add(corners, 'POINT', { layer: 'Defpoints', rank: 0 }, [[100, 'AcDbPoint'], ...point(10, at)])
  add(place, 'DIMENSION', penLayer(draft, size.layer, 'size', scale), [
    [100, 'AcDbDimension'],
    [2, block.name],
    ...point(10, foot),
    ...point(11, middleOf(size, place)),
    [70, 0 | 32 | 128],
    [
      1,
      writeNumber(span / (draft.enlarged ?? 1), draft.look.language) === size.words
        ? ''
        : plainWords(size.words),
    ],
    [71, 5],
    [42, span / (draft.enlarged ?? 1)],
    [3, styleOf(draft, scale, 'dot')],
    [100, 'AcDbAlignedDimension'],
    ...point(13, from),
    ...point(14, to),
    [50, (Math.atan2(along[1], along[0]) * 180) / Math.PI],
    [100, 'AcDbRotatedDimension'],
  ])
}

/** The middle of the words, which the mark knows at their foot; they are read from below or from the right. */
const middleOf = ({ from, to, text }: Size, place: Place): Point => {
  const angle = Math.atan2(to[1] - from[1], to[0] - from[0])
  const reading = angle > Math.PI / 2 + 1e-6 || angle <= -Math.PI / 2 + 1e-6 ? angle + Math.PI : angle
  return place.at([text[0] - Math.sin(reading) * half_mm, text[1] + Math.cos(reading) * half_mm])
}

/** Half the height of the words of a size. */
const half_mm = 1.25

type Leader = Extract<ViewMark, { kind: 'leader' }>

/** A leader in paper mm, its number as words of its own that know their leader, and the circle round it. */
export const drawLeader = (place: Place, leader: Leader, inks: readonly Ink[]): void => {
  const { draft, scale } = place
  const on = penLayer(draft, leader.layer, 'leader', scale)
  const ring = inks.find(it => it.kind === 'rings')
  const handle = draft.handle()
  const [x, y, radius] = ring?.circles ?? []
  const middle = x === undefined || y === undefined ? undefined : place.at([x, y])
  const own = { ...on.own, ...(leader.part !== undefined && { part: leader.part }) }
  const words = middle && numberOf(place, leader, { middle, leader: handle })
  add(
    place,
    'LEADER',
    { ...on, own: { ...own, handle } },
    leaderTags(place, leader, words === undefined ? undefined : { handle: words }),
  )
  if (middle && radius !== undefined)
    circle(place, middle, radius / scale, penLayer(draft, leader.layer, 'stroke', scale))
}

const leaderTags = (
  place: Place,
  { path, end }: Leader,
  words: { readonly handle: string } | undefined,
): Tags => [
  [100, 'AcDbLeader'],
  [3, styleOf(place.draft, place.scale, end === 'arrow' ? 'arrow' : 'dot')],
  [71, end === 'none' ? 0 : 1],
  [72, 0],
  [73, words === undefined ? 3 : 0],
  [74, 0],
  [75, 0],
  [40, 2 * half_mm],
  [41, 0],
  [76, path.length],
  ...path.flatMap(it => point(10, place.at(it))),
  ...(words === undefined ? [] : ([[340, words.handle]] as const)),
]

const numberOf = (
  place: Place,
  leader: Leader,
  at: { readonly middle: Point; readonly leader: string },
): string => {
  const on = penLayer(place.draft, leader.layer, 'text', place.scale)
  return add(place, 'MTEXT', { ...on, own: { ...on.own, reactor: at.leader } }, [
    [100, 'AcDbMText'],
    ...point(10, at.middle),
    [40, (2 * half_mm) / place.scale],
    [41, 0],
    [71, 5],
    [72, 1],
    ...paragraphs(paragraphWords(leader.number)),
    [7, styles.bold],
    [50, 0],
    [73, 1],
    [44, 1],
  ])
}

/** Long words in pieces of 250 signs, the last of them short. */
const paragraphs = (words: string): Tags => {
  const tags: [number, string][] = []
  let rest = words
  for (; rest.length > 250; rest = rest.slice(250)) tags.push([3, rest.slice(0, 250)])
  return [...tags, [1, rest]]
}
