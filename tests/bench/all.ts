import type { Bench } from './bench'
import { checkProcess } from './check-process'
import { checkMany } from './check-many'
import { dragFrame } from './drag-frame'
import { drawingSection } from './drawing-section'
import { exportSheets } from './export-sheets'
import { heatOverlay } from './heat-overlay'
import { heatSolve } from './heat-solve'
import { cutAndFile } from './cut-and-file'
import { vapour } from './vapour'
import { openToMarks } from './open-to-marks'

/** Everything that is timed. */
export const benches: readonly Bench[] = [
  ...cutAndFile,
  ...openToMarks,
  ...dragFrame,
  ...checkProcess,
  ...checkMany,
  ...drawingSection,
  ...exportSheets,
  ...heatSolve,
  ...heatOverlay,
  ...vapour,
]
