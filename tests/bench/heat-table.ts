import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import {
  type Project,
  type ZonePlace,
  applyEdit,
  jointOf,
  materialOf,
  samples,
  zonesOf,
} from '../../core/detail'
import {
  type HeatCase,
  type Moving,
  flows_W_m,
  moveTo,
  readPlainCase,
  sectionCase,
  solveCase,
  startMoving,
  usualClimate,
} from '../../core/heat'
import { cutSection } from '../../core/section'
import { moved } from '../given/moved'
import { randomFrom } from '../given/random'
import { randomEdit } from '../given/random-detail'
import { timed } from './bench'
import { calibration } from './calibration'
import { freefemCase } from './heat-freefem'

/** What one number cannot say of the heat solver: errors, tails, memory, and a general-purpose package beside it. */
export const printHeatTable = async (): Promise<void> => {
  const unit = await timed(calibration)
  console.log(`${calibration.name}: ${unit.median_ms.toFixed(2)} ms`)
  for (const [name, exact_W_m] of [
    ['jamb', 14.4502],
    ['sill', 14.396],
    ['iso-10211-case-2', 9.49145],
  ] as const)
    // prettier-ignore
    stages(name, exact_W_m)
  edits()
  memory()
  beside('jamb', 14.4502)
}

const caseOf = (name: string): HeatCase => {
  const text = readFileSync(`tests/reference/cases/heat/${name}.json`, 'utf8')
  const read = readPlainCase(JSON.stringify(JSON.parse(text).section))
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value
}

const at = (times: readonly number[], share: number): string =>
  (times.toSorted((a, b) => a - b)[Math.floor(share * times.length)] ?? NaN).toFixed(2)

const inflow = (flows: readonly number[]): number => flows.reduce((sum, flow) => sum + Math.max(0, flow), 0)

/** Cold, stage by stage. */
const stages = (name: string, exact_W_m: number): void => {
  const it = caseOf(name)
  const all = { mesh: [] as number[], assembly: [] as number[], solve: [] as number[], total: [] as number[] }
  let line = ''
  for (let run = 0; run < 360; run++) {
    const from = performance.now()
    const solved = solveCase(it, undefined, () => performance.now())
    const total = performance.now() - from
    if (!solved.ok) throw new Error(JSON.stringify(solved.problems))
    if (run < 60) continue
    const { mesh, spent, iterations } = solved.value
    all.mesh.push(spent.mesh)
    all.assembly.push(spent.assembly)
    all.solve.push(spent.solve)
    all.total.push(total)
    const error = 100 * (inflow(flows_W_m(solved.value)) / exact_W_m - 1)
    line = `${mesh.vertices + mesh.edges} unknowns, ${iterations} steps, error of the flow ${error.toFixed(4)} %`
  }
  console.log(
    `${name}, cold: median ${at(all.total, 0.5)} ms, 95 % ${at(all.total, 0.95)} ms ` +
      `(mesh ${at(all.mesh, 0.5)}, assembly ${at(all.assembly, 0.5)}, order, factor and steps ${at(all.solve, 0.5)}); ${line}`,
  )
}

/** A thousand seeded edits over all samples, every one cut anew: what heat takes of each frame. */
const edits = (): void => {
  const random = randomFrom(7)
  const [first, ...more] = samples.map(it => it.project)
  if (!first) throw new Error('there are no samples')
  const times: number[] = []
  const count = { followed: 0, remeshed: 0, begun: 0, refused: 0 }
  let project = first
  let moving: Moving | undefined
  let place = zonesOf(project)[0]
  for (let edit = 0; times.length < 1000; edit++) {
    if (edit % 25 === 0) {
      project = random.one([first, ...more])
      const [some, ...others] = zonesOf(project)
      place = some && random.one([some, ...others])
      moving = undefined
    }
    const edited = applyEdit(project, randomEdit(project, random))
    const zone = place && zonesOf(project).find(it => it.zone.id === place?.zone.id)
    if (!edited.ok || !zone) continue
    project = edited.value
    const it = caseAt(project, zone)
    if (!it) continue
    const from = performance.now()
    const frame = moving ? moveTo(moving, it) : startMoving(it)
    times.push(performance.now() - from)
    if (!frame.ok) count.refused++
    else if ('how' in frame.value) count[frame.value.how]++
    else count.begun++
    moving = !frame.ok ? undefined : 'moving' in frame.value ? frame.value.moving : frame.value
  }
  console.log(
    `1,000 edits of samples: median ${at(times, 0.5)} ms, 95 % ${at(times, 0.95)} ms, 99.5 % ${at(times, 0.995)} ms, ` +
      `longest ${at(times, 0.9999)} ms (${JSON.stringify(count)})`,
  )
}

const caseAt = (project: Project, place: ZonePlace): HeatCase | undefined => {
  const width_mm = jointOf(project, place.zone).planned_mm.value
  const turned = sectionCase(cutSection(project, place, { state: 'planned', width_mm }), {
    climate: usualClimate,
    purpose: 'heat-loss',
    materialOf: id => materialOf(project, id),
  })
  return turned.ok ? turned.value.case : undefined
}

/** Ten thousand frames: what is kept must not grow. */
const memory = (): void => {
  const it = caseOf('jamb')
  const places = Array.from({ length: 63 }, (_, i) =>
    moved(it, ([x, y]) => [x > 12.5 ? x + 2 * Math.sin(i / 10) : x, y]),
  )
  const started = startMoving(it)
  if (!started.ok) throw new Error(JSON.stringify(started.problems))
  let moving = started.value
  const kept = (): number => {
    globalThis.gc?.()
    const { heapUsed, arrayBuffers } = process.memoryUsage()
    return (heapUsed + arrayBuffers) / 2 ** 20
  }
  const frames = (count: number) => {
    for (let n = 0; n < count; n++) {
      const frame = moveTo(moving, places[n % places.length] ?? it)
      if (frame.ok) moving = frame.value.moving
    }
    return kept()
  }
  const [early, late] = [frames(500), frames(10_000)]
  const how = globalThis.gc ? 'collected' : 'not collected, run with --expose-gc'
  console.log(
    `memory (${how}): ${early.toFixed(2)} MiB after 500 frames, ${late.toFixed(2)} MiB after 10,000 more`,
  )
}

/** The same section at an equal error by FreeFem++, a general-purpose finite-element package. */
const beside = (name: string, exact_W_m: number): void => {
  const program = 'FreeFem++-nw'
  if (spawnSync(program, ['-h']).error) {
    console.log('FreeFem++ is not installed: no comparison')
    return
  }
  const it = caseOf(name)
  const folder = mkdtempSync(join(tmpdir(), 'jambwright-freefem-'))
  try {
    const { mesh, script } = freefemCase(it)
    writeFileSync(join(folder, 'case.msh'), mesh)
    writeFileSync(join(folder, 'case.edp'), script)
    const { stdout } = spawnSync(program, ['-v', '0', '-f', 'case.edp'], { cwd: folder, encoding: 'utf8' })
    const rows = stdout.split('\n').filter(row => row.startsWith('ROUND'))
    if (rows.length === 0) console.log(`FreeFem++ failed: ${stdout.slice(-500)}`)
    for (const row of rows) {
      const [, round, unknowns, flow, mesh_ms, solve_ms, all_ms, area] = row.split(/\s+/)
      const error = 100 * (Number(flow) / exact_W_m - 1)
      console.log(
        `FreeFem++ ${name}, round ${round}: ${unknowns} unknowns, error ${error.toFixed(4)} %, mesh ${mesh_ms} ms, ` +
          `solve ${solve_ms} ms, all rounds so far ${all_ms} ms, area ${area} mm²`,
      )
    }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
