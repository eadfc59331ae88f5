import { expect, it } from 'vitest'
import { openingBounds, writtenBounds } from '../../app/main/bounds'

const one = [{ x: 0, y: 0, width: 1920, height: 1040 }]
const two = [...one, { x: 1920, y: -200, width: 2560, height: 1400 }]
const usual = { width: 1440, height: 900, maximised: false }
const was = (x: number, y: number, width: number, height: number): string =>
  writtenBounds({ x, y, width, height }, false)

it.each([
  [
    'where it was',
    was(100, 80, 1200, 700),
    one,
    { x: 100, y: 80, width: 1200, height: 700, maximised: false },
  ],
  [
    'on the second screen',
    was(2000, -100, 1600, 900),
    two,
    { x: 2000, y: -100, width: 1600, height: 900, maximised: false },
  ],
  ['as usual where its screen is gone', was(2000, -100, 1600, 900), one, usual],
  ['as usual where it would be out of reach', was(-30_000, 0, 1200, 700), one, usual],
  ['as usual where only a sliver would be on a screen', was(1900, 0, 1200, 700), one, usual],
  ['as usual where its upper edge would be above every screen', was(100, -400, 1200, 700), one, usual],
  [
    'no smaller than it may be',
    was(0, 0, 300, 200),
    one,
    { x: 0, y: 0, width: 1024, height: 640, maximised: false },
  ],
  [
    'no larger than its screen',
    was(0, 0, 9000, 9000),
    one,
    { x: 0, y: 0, width: 1920, height: 1040, maximised: false },
  ],
  ['as usual at the first start', '', one, usual],
  ['as usual after nonsense', '{"x":"left"}', one, usual],
  ['as usual after broken nonsense', '{"x":', one, usual],
] as const)('a window opens %s', (_, remembered, screens, expected) => {
  expect(openingBounds(remembered, screens)).toEqual(expected)
})

it('a window that was as large as its screen is so again, wherever that is', () => {
  expect(openingBounds(writtenBounds({ x: 5000, y: 0, width: 1200, height: 700 }, true), one)).toEqual({
    ...usual,
    maximised: true,
  })
})
