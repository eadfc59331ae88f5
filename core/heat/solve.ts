import { type Factor, solveFactor } from './algebra/factor'
import type { Properties, System } from './assemble'
import { cornerBubble, film, foil } from './element'

/** A temperature field: corners and bubble heights, °C. */
export type Field = { readonly corner_C: Float64Array; readonly bubble_K: Float64Array }

/** Vectors of the iteration, made once per mesh. */
export type Iteration = {
  readonly residual: Float64Array
  readonly direction: Float64Array
  readonly image: Float64Array
  readonly cornerWork: Float64Array
  readonly cornerImage: Float64Array
}

/** How the iteration went: what its last step still gained, and what the films turn over (Σ flow × temperature). */
export type Solved = { readonly iterations: number; readonly gain: number; readonly power: number }

/** What a field is solved with. */
export type Equations = { readonly system: System; readonly factor: Factor; readonly properties: Properties }

export const iterationFor = ({ mesh }: System): Iteration => ({
  residual: new Float64Array(mesh.edges),
  direction: new Float64Array(mesh.edges),
  image: new Float64Array(mesh.edges),
  cornerWork: new Float64Array(mesh.vertices),
  cornerImage: new Float64Array(mesh.vertices),
})

/**
 * Solves for the field, starting from what `scratch` holds. Corners are eliminated exactly by their factor, and
 * conjugate gradients run on the bubbles alone, preconditioned by their diagonal (a Schur complement: half the steps of
 * the same method on all unknowns). The corner equations therefore hold to rounding at every step, and with them the
 * heat balance. Stops when two steps running gain less than `tolerance` of the power.
 */
export const solve = (
  { system, factor, properties }: Equations,
  scratch: { readonly field: Field; readonly iteration: Iteration },
  tolerance: number,
): Solved => {
  const { corner_C, bubble_K } = scratch.field
  const { residual, direction, image, cornerWork, cornerImage } = scratch.iteration
  const { bubbleInverse, load } = system
  const n = bubble_K.length
  // Corners that balance the bubbles: A u = load - Cᵀ b.
  cornersFrom(system, bubble_K, cornerWork)
  for (let v = 0; v < load.length; v++) cornerWork[v] = load[v]! - cornerWork[v]!
  solveFactor(factor, cornerWork, corner_C)
  bubblesFrom(system, corner_C, bubble_K, image)
  let rho = 0
  const enough = tolerance * Math.abs(powerOf(system, properties, corner_C, bubble_K))
  for (let e = 0; e < n; e++) {
    const r = system.bubbleLoad[e]! - image[e]!
    residual[e] = r
    const z = r * bubbleInverse[e]!
    direction[e] = z
    rho += r * z
  }
  let iterations = 0
  let gain = rho
  let recent = Infinity
  const noise = roundingOf(system)
  for (; iterations < mostIterations && rho > noise; iterations++) {
    cornersFrom(system, direction, cornerWork)
    solveFactor(factor, cornerWork, cornerImage)
    for (let v = 0; v < cornerImage.length; v++) cornerImage[v] = -cornerImage[v]!
    bubblesFrom(system, cornerImage, direction, image)
    let curvature = 0
    for (let e = 0; e < n; e++) curvature += direction[e]! * image[e]!
    if (!(curvature > 0)) break
    const alpha = rho / curvature
    let next = 0
    for (let e = 0; e < n; e++) {
      bubble_K[e]! += alpha * direction[e]!
      const r = residual[e]! - alpha * image[e]!
      residual[e] = r
      next += r * r * bubbleInverse[e]!
    }
    for (let v = 0; v < cornerImage.length; v++) corner_C[v]! += alpha * cornerImage[v]!
    gain = alpha * rho
    const beta = next / rho
    rho = next
    if (gain <= enough && recent <= enough) {
      iterations++
      break
    }
    recent = gain
    for (let e = 0; e < n; e++) direction[e] = residual[e]! * bubbleInverse[e]! + beta * direction[e]!
  }
  settleCorners(system, factor, scratch)
  return { iterations, gain, power: powerOf(system, properties, corner_C, bubble_K) }
}

/**
 * Solves the corners once more for what rounding has left of their equations. Slivers couple their corners a million
 * times harder than the rest; the residual is therefore taken from differences of temperatures.
 */
const settleCorners = (
  system: System,
  factor: Factor,
  scratch: { readonly field: Field; readonly iteration: Iteration },
): void => {
  const { corner_C, bubble_K } = scratch.field
  const { cornerWork, cornerImage } = scratch.iteration
  const { mesh, k, load, filmEdge, filmWeight, foilEdge, foilWeight } = system
  const { corner } = mesh
  cornersFrom(system, bubble_K, cornerWork)
  for (let v = 0; v < load.length; v++) cornerWork[v] = load[v]! - cornerWork[v]!
  for (let i = 0; i < 3 * mesh.triangles; i += 3) {
    const [a, b, c] = [corner[i]!, corner[i + 1]!, corner[i + 2]!]
    const f0 = k[i]! * (corner_C[b]! - corner_C[c]!)
    const f1 = k[i + 1]! * (corner_C[c]! - corner_C[a]!)
    const f2 = k[i + 2]! * (corner_C[a]! - corner_C[b]!)
    cornerWork[a]! += f2 - f1
    cornerWork[b]! += f0 - f2
    cornerWork[c]! += f1 - f0
  }
  for (let m = 0; m < filmEdge.length; m++) {
    const [a, b] = [mesh.edgeFrom[filmEdge[m]!]!, mesh.edgeTo[filmEdge[m]!]!]
    cornerWork[a]! -= filmWeight[m]! * (film.own * corner_C[a]! + film.across * corner_C[b]!)
    cornerWork[b]! -= filmWeight[m]! * (film.own * corner_C[b]! + film.across * corner_C[a]!)
  }
  for (let m = 0; m < foilEdge.length; m++) {
    const [a, b] = [mesh.edgeFrom[foilEdge[m]!]!, mesh.edgeTo[foilEdge[m]!]!]
    const q = foil.ends * foilWeight[m]! * (corner_C[a]! - corner_C[b]!)
    cornerWork[a]! -= q
    cornerWork[b]! += q
  }
  solveFactor(factor, cornerWork, cornerImage)
  for (let v = 0; v < load.length; v++) corner_C[v]! += cornerImage[v]!
}

/** A guard: sections with angles of three degrees take about a hundred steps, everything usual takes ten to thirty. Ours. */
const mostIterations = 2000

/** Residuals below this are rounding. */
const roundingOf = ({ load, diagonal }: System): number => {
  let sum = 0
  for (let v = 0; v < load.length; v++) sum += (load[v]! * load[v]!) / diagonal[v]!
  return sum * 1e-28
}

/** Σ flow × temperature over the films, W·K per m: with two temperatures the flow times their difference. Infinite contacts are left out. */
export const powerOf = (
  { mesh, filmEdge, filmSurface, filmWeight, contact }: System,
  { air_C }: Properties,
  corner_C: Float64Array,
  bubble_K: Float64Array,
): number => {
  let sum = 0
  for (let m = 0; m < filmEdge.length; m++) {
    const e = filmEdge[m]!
    if (contact[mesh.edgeFrom[e]!] || contact[mesh.edgeTo[e]!]) continue
    const air = air_C[filmSurface[m]!]!
    const mean =
      (corner_C[mesh.edgeFrom[e]!]! + corner_C[mesh.edgeTo[e]!]!) / 2 + film.bubbleLoad * bubble_K[e]!
    sum += filmWeight[m]! * (air - mean) * air
  }
  return sum
}

/** Corner equations of a field of bubbles alone: Cᵀ b. */
const cornersFrom = (
  { mesh, k, filmEdge, filmWeight }: System,
  bubble: Float64Array,
  out: Float64Array,
): void => {
  const { corner, edgeOf, triangles } = mesh
  out.fill(0)
  for (let i = 0; i < 3 * triangles; i += 3) {
    const b0 = bubble[edgeOf[i]!]!
    const b1 = bubble[edgeOf[i + 1]!]!
    const b2 = bubble[edgeOf[i + 2]!]!
    const f0 = k[i]! * (b1 - b2)
    const f1 = k[i + 1]! * (b2 - b0)
    const f2 = k[i + 2]! * (b0 - b1)
    out[corner[i]!]! += cornerBubble * (f2 - f1)
    out[corner[i + 1]!]! += cornerBubble * (f0 - f2)
    out[corner[i + 2]!]! += cornerBubble * (f1 - f0)
  }
  for (let m = 0; m < filmEdge.length; m++) {
    const e = filmEdge[m]!
    const q = film.bubble * filmWeight[m]! * bubble[e]!
    out[mesh.edgeFrom[e]!]! += q
    out[mesh.edgeTo[e]!]! += q
  }
}

/** Bubble equations of a field: C u + B b. */
export const bubblesFrom = (
  { mesh, k, filmEdge, filmWeight, foilEdge, foilWeight }: System,
  corner_C: Float64Array,
  bubble: Float64Array,
  out: Float64Array,
): void => {
  const { corner, edgeOf, triangles } = mesh
  out.fill(0)
  for (let i = 0; i < 3 * triangles; i += 3) {
    const e0 = edgeOf[i]!
    const e1 = edgeOf[i + 1]!
    const e2 = edgeOf[i + 2]!
    const u0 = corner_C[corner[i]!]!
    const u1 = corner_C[corner[i + 1]!]!
    const u2 = corner_C[corner[i + 2]!]!
    const b0 = bubble[e0]!
    const b1 = bubble[e1]!
    const b2 = bubble[e2]!
    const k0 = cornerBubble * k[i]!
    const k1 = cornerBubble * k[i + 1]!
    const k2 = cornerBubble * k[i + 2]!
    const g0 = k0 * (u1 - u2 - 2 * (b1 - b2))
    const g1 = k1 * (u2 - u0 - 2 * (b2 - b0))
    const g2 = k2 * (u0 - u1 - 2 * (b0 - b1))
    out[e0]! += g2 - g1 - 2 * k0 * b0
    out[e1]! += g0 - g2 - 2 * k1 * b1
    out[e2]! += g1 - g0 - 2 * k2 * b2
  }
  for (let m = 0; m < filmEdge.length; m++) {
    const e = filmEdge[m]!
    out[e]! +=
      filmWeight[m]! *
      (film.bubble * (corner_C[mesh.edgeFrom[e]!]! + corner_C[mesh.edgeTo[e]!]!) +
        film.bubbleOwn * bubble[e]!)
  }
  for (let m = 0; m < foilEdge.length; m++)
    out[foilEdge[m]!]! += foil.bubble * foilWeight[m]! * bubble[foilEdge[m]!]!
}
