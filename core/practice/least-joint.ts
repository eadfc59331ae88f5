import type { FrameMaterial, RevealForm } from '../kinds'
import { type Citation, cite } from '../sources'
import type { Row } from './limit'

/**
 * Least width of a joint with elastic sealant by frame, reveal and governing length, in mm, as German and Austrian
 * practice reads it. Where a line ends, the table has no value: split the element or prove the width by calculation.
 */
export const leastJoints = (): readonly Row<'least-joint'>[] => {
  const table = cite('joint-width-table', 'published')
  const remembered = cite('window-joint-leaflet', 'memory')
  return [
    ...lines('pvc-white', [10, 15, 20], [10, 10, 15], table),
    ...lines('pvc-coloured', [15, 20], [10, 15, 15], table),
    // Aluminium with thermal break; the colour is not asked, so the wider line for dark profiles holds.
    ...lines('aluminium', [10, 15, 20, 25], [10, 15, 15], remembered),
    ...lines('timber', [10, 10, 10, 10], [10, 10, 10], remembered),
    // No table names it: the timber carries, so the line for timber holds.
    ...lines('timber-aluminium', [10, 10, 10, 10], [10, 10, 10], cite('convention', 'ours')),
  ]
}

const lines = (
  frame: FrameMaterial,
  butt_mm: readonly number[],
  rebate_mm: readonly number[],
  by: Citation,
): readonly Row<'least-joint'>[] => {
  const buttTo_mm = [1500, 2500, 3500, 4500]
  const rebateTo_mm = [2500, 3500, 4500]
  const cells = (reveal: RevealForm, least: readonly number[], to_mm: readonly number[]) =>
    least.map((least_mm, at): Row<'least-joint'> => ({
      when: {
        frame: [frame],
        reveal: [reveal],
        length_mm: { above: to_mm[at - 1] ?? 0, upTo: to_mm[at] ?? 0 },
      },
      then: { least_mm },
      cite: by,
      ifBroken: 'not-met',
    }))
  return [...cells('butt', butt_mm, buttTo_mm), ...cells('inner-rebate', rebate_mm, rebateTo_mm)]
}
