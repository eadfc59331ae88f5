import { readFileSync } from 'node:fs'
import { type HeatCase, readPlainCase } from '../../core/heat'

/** The section of a published case, by the name of its file. */
export const aHeatCase = (name: string): HeatCase => {
  const file = new URL(`../reference/cases/heat/${name}.json`, import.meta.url)
  const read = readPlainCase(JSON.stringify(JSON.parse(readFileSync(file, 'utf8')).section))
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value
}

/** A wall of layers, each a rectangle of the same height, films on both ends: heat runs in one dimension. */
export const aLayeredWall = (
  layers: readonly { readonly thickness_mm: number; readonly lambda_W_mK: number }[],
  films: { readonly outside_W_m2K: number; readonly inside_W_m2K: number },
): HeatCase => {
  const height = 100
  let x = 0
  const bodies = layers.map(({ thickness_mm, lambda_W_mK }, i) => {
    const [from, to] = [x, (x += thickness_mm)]
    return {
      name: `layer ${i + 1}`,
      outline: [[from, 0], [to, 0], [to, height], [from, height]] as const, // prettier-ignore
      holes: [],
      lambda_W_mK,
    }
  })
  return {
    name: 'layered wall',
    bodies,
    surfaces: [
      { name: 'outside', h_W_m2K: films.outside_W_m2K, air_C: -5, edges: [[[0, 0], [0, height]]] },
      { name: 'inside', h_W_m2K: films.inside_W_m2K, air_C: 20, edges: [[[x, 0], [x, height]]] },
    ],
    foils: [],
    probes: {},
  } // prettier-ignore
}
