import { readFileSync } from 'node:fs'
import { type HeatCase, type Moving, moveTo, readPlainCase, solveCase, startMoving } from '../../core/heat'
import { moved } from '../given/moved'
import type { Bench } from './bench'

const caseOf = (name: string): HeatCase => {
  const text = readFileSync(`tests/reference/cases/heat/${name}.json`, 'utf8')
  const read = readPlainCase(JSON.stringify(JSON.parse(text).section))
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value
}

/** From outlines to result with nothing known before, at a heat-flow error of at most 0.02 percent. */
const cold: readonly Bench[] = [
  ['jamb', 10],
  ['sill', 10],
  ['iso-10211-case-2', 2],
].map(([name, wanted_ms]): Bench => {
  const it = caseOf(String(name))
  return {
    name: `heat of ${name}, cold`,
    wanted_ms: Number(wanted_ms),
    warmUp: 60,
    runs: 300,
    run: () => solveCase(it),
  }
})

/** One frame of a movement: the joint of the jamb widened, its frame set in or out. */
const frames: readonly Bench[] = [
  [
    'joint of the jamb',
    'jamb',
    (by: number) =>
      ([x, y]: Place): Place => [x > 12.5 ? x + by : x, y],
  ],
  [
    'frame in the jamb',
    'jamb',
    (by: number) =>
      ([x, y]: Place): Place => [x, 171 < y && y < 300 ? y + by : y],
  ],
  [
    'frame on the sill',
    'sill',
    (by: number) =>
      ([x, y]: Place): Place => [x, y > 37 ? y + by : y],
  ],
].map(([name, section, by]): Bench => {
  const it = caseOf(String(section))
  const places = Array.from({ length: 63 }, (_, i) => moved(it, (by as Move)(2 * Math.sin(i / 10)))) // the third is a function
  const started = startMoving(it)
  if (!started.ok) throw new Error(JSON.stringify(started.problems))
  let moving: Moving = started.value
  let move = 0
  return {
    name: `heat while the ${name} moves, one frame`,
    wanted_ms: 3,
    warmUp: 60,
    runs: 600,
    run: () => {
      const frame = moveTo(moving, places[move++ % places.length] ?? it)
      if (frame.ok) moving = frame.value.moving
    },
  }
})

type Place = readonly [number, number]
type Move = (by: number) => (place: Place) => Place

export const heatSolve: readonly Bench[] = [...cold, ...frames]
