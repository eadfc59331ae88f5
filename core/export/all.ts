import type { Format } from './format'
import { pdf } from './pdf/pdf'
import { svg } from './svg/svg'

/** Every format that a drawing can be written in, the one for issue first. */
export const formats: readonly Format[] = [pdf, svg]
