import { type HeatCase, type Moving, moveTo, solveCase, startMoving } from '../../core/heat'
import { moved } from '../given/moved'

/** The bench's half that runs in a browser's worker: it gets cases, and gives back times. */
export type Asked = { readonly jamb: HeatCase; readonly runs: number }
export type Told = { readonly cold: readonly number[]; readonly frame: readonly number[] }

const time = (times: number[], work: () => void): void => {
  const from = performance.now()
  work()
  times.push(performance.now() - from)
}

const measure = ({ jamb, runs }: Asked): Told => {
  const cold: number[] = []
  for (let n = 0; n < runs; n++) time(cold, () => solveCase(jamb))
  const frame: number[] = []
  const started = startMoving(jamb)
  if (!started.ok) throw new Error(JSON.stringify(started.problems))
  let moving: Moving = started.value
  for (let n = 0; n < 2 * runs; n++) {
    const to = moved(jamb, ([x, y]) => [x > 12.5 ? x + 2 * Math.sin(n / 10) : x, y])
    time(frame, () => {
      const next = moveTo(moving, to)
      if (next.ok) moving = next.value.moving
    })
  }
  return { cold: cold.slice(runs / 4), frame: frame.slice(runs / 4) }
}

addEventListener('message', (event: MessageEvent<Asked>) => postMessage(measure(event.data)))
