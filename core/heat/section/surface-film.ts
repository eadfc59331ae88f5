import type { Face } from '../../section'

/** What a calculation is for: the standards ask for other surface resistances for each. */
export const purposes = ['heat-loss', 'surface-humidity', 'frame'] as const
export type Purpose = (typeof purposes)[number]

/** Temperatures of the environments, °C. */
export type Climate = { readonly inside_C: number; readonly outside_C: number; readonly ground_C: number }

/** 20 °C and −5 °C as DIN 4108-2 asks for mould (published); 10 °C in the ground as a yearly mean (from memory). */
export const usualClimate: Climate = { inside_C: 20, outside_C: -5, ground_C: 10 }

/** Outside film, any purpose (EN ISO 6946, published). */
const outside_m2K_W = 0.04

/** Inside film for horizontal heat flow (EN ISO 6946, published). */
const inside_m2K_W = 0.13

/** Inside film over a floor, where heat flows downwards (EN ISO 6946, published). */
const downwards_m2K_W = 0.17

/** Inside film for mould on opaque parts; glazing and frames keep the usual one (EN ISO 13788, from memory). */
const humid_m2K_W = 0.25

/** Inside film in zones of reduced radiation beside steps of a frame (EN ISO 10077-2, published). */
const reduced_m2K_W = 0.2

/** Ground at thresholds: half a metre of soil of 2.0 W/(mK) to where the ground keeps its temperature. Ours. */
const ground_m2K_W = 0.5 / 2

/** The film of a face, W/(m²K). Reduced zones exist for the purpose of frames only. */
export const film_W_m2K = (face: Pick<Face, 'to' | 'of'>, purpose: Purpose, isReduced: boolean): number => {
  if (face.to === 'outside') return 1 / outside_m2K_W
  if (face.to === 'ground') return 1 / ground_m2K_W
  if (purpose === 'frame' && isReduced) return 1 / reduced_m2K_W
  const isOpaque = face.of !== 'glass' && face.of !== 'frame'
  if (purpose === 'surface-humidity' && isOpaque) return 1 / humid_m2K_W
  return 1 / (face.of === 'floor' ? downwards_m2K_W : inside_m2K_W)
}
