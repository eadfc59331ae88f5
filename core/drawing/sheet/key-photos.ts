import type { Opening, PinnedPhoto } from '../../detail'
import type { Point } from '../../geometry'
import { type Language, words } from '../../words'
import type { ViewMark } from '../mark'
import { heights, textWidth_mm } from '../text/lettering'
import { rectangle, text } from './marks'
import { type Box, meet } from './side-words'

/** What a field takes beside and above its numbers, and what is left free round it. Ours. */
const beside_mm = 1.4
const above_mm = 1.2
const off_mm = 0.4
const step_mm = 0.25
/** Photos that were taken no further apart on the picture share a field; none moves further off its place. Ours. */
const together_mm = 3
const farthest_mm = 22
/** A step off its side counts as so many along it. Ours. */
const inwards = 3

/**
 * The photos of the site that are pinned to an opening, as numbers in small fields where they were taken: at a side, or in
 * the middle of the light. A field keeps off lines and off others; one that finds no place stands in the check report alone.
 */
export const photoFields = (of: Opening, light: Box, lines: readonly Box[]): readonly ViewMark[] => {
  const taken = [...lines]
  // numbers of one place stand in one field, in two where that has no room
  const place = (at: Point, steps: Point, numbers: readonly number[]): readonly ViewMark[] => {
    const words = numbers.join(', ')
    const found = nearest(at, steps, sizeOf(words), { light, taken })
    if (found === undefined) {
      const half = Math.ceil(numbers.length / 2)
      return half < numbers.length
        ? [...place(at, steps, numbers.slice(0, half)), ...place(at, steps, numbers.slice(half))]
        : []
    }
    taken.push(boxAt(found, sizeOf(words)))
    return photoField(words, found)
  }
  return placesIn(of, light).flatMap(({ at, steps, numbers }) => place(at, steps, numbers))
}

/** Where photos were taken, each place with the numbers of its photos. */
const placesIn = ({ photos = [], width_mm, height_mm }: Opening, light: Box) => {
  const places: { readonly at: Point; readonly steps: Point; readonly numbers: number[] }[] = []
  for (const [index, photo] of photos.entries()) {
    const at = placeOf(photo, light, [width_mm.value, height_mm.value])
    const there = places.find(it => Math.hypot(it.at[0] - at[0], it.at[1] - at[1]) <= together_mm)
    if (there) there.numbers.push(index + 1)
    else places.push({ at, steps: stepsOff(photo), numbers: [index + 1] })
  }
  return places
}

const sizeOf = (words: string): Point => [
  textWidth_mm(words, heights.note_mm) + beside_mm,
  heights.note_mm + above_mm,
]

/** Numbers in their field, from its lower left corner. */
const photoField = (words: string, [x, y]: Point): readonly ViewMark[] => [
  rectangle('seen', [x, y], sizeOf(words)),
  text(words, [x + beside_mm / 2, y + above_mm / 2]),
]

/** What a field is, below the picture; how wide that is. */
export const photoEntry = (language: Language) => {
  const [wide] = sizeOf('n')
  return {
    width_mm: wide + 1.2 + textWidth_mm(photoWord[language], heights.note_mm),
    draw: ([x, y]: Point): readonly ViewMark[] => [
      ...photoField('n', [x, y - above_mm / 2]),
      text(photoWord[language], [x + wide + 1.2, y]),
    ],
  }
}

const photoWord = words('photo n', 'Foto n')

/** Where a photo was taken: along its side from the left or from below, its middle where nobody says. */
const placeOf = ({ side, at_mm }: PinnedPhoto, [[x0, y0], [x1, y1]]: Box, [width, height]: Point): Point => {
  if (side === undefined) return [(x0 + x1) / 2, (y0 + y1) / 2]
  const along = side === 'head' || side === 'sill' ? width : height
  const share = at_mm === undefined ? 0.5 : Math.min(1, at_mm / along)
  const [x, y] = [x0 + (x1 - x0) * share, y0 + (y1 - y0) * share]
  switch (side) {
    case 'head':
      return [x, y1]
    case 'sill':
      return [x, y0]
    case 'left':
      return [x0, y]
    case 'right':
      return [x1, y]
  }
}

/** How much a step across and one up count, at the side that a photo was taken at. */
const stepsOff = ({ side }: PinnedPhoto): Point =>
  side === undefined ? [1, 1] : side === 'left' || side === 'right' ? [inwards, 1] : [1, inwards]

const nearest = (
  [x, y]: Point,
  [across, up]: Point,
  [wide, tall]: Point,
  { light: [low, high], taken }: { readonly light: Box; readonly taken: readonly Box[] },
): Point | undefined => {
  let best: Point | undefined
  let least = farthest_mm
  for (let left = low[0] + off_mm; left + wide + off_mm <= high[0]; left += step_mm)
    for (let down = low[1] + off_mm; down + tall + off_mm <= high[1]; down += step_mm) {
      const away = Math.hypot(across * (left + wide / 2 - x), up * (down + tall / 2 - y))
      if (away < least && !taken.some(it => meet(boxAt([left, down], [wide, tall]), it)))
        [best, least] = [[left, down], away]
    }
  return best
}

const boxAt = ([x, y]: Point, [wide, tall]: Point): Box => [
  [x - off_mm, y - off_mm],
  [x + wide + off_mm, y + tall + off_mm],
]
