import type { Format } from './format'
import { dxf, dxf2000 } from './dxf/dxf'
import { pdf } from './pdf/pdf'
import { svg } from './svg/svg'

/** Every format that a drawing can be written in, the one for issue first. */
export const formats: readonly Format[] = [pdf, dxf, dxf2000, svg]
