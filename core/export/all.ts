import type { Format } from './format'
import { svg } from './svg/svg'

/** Every format that a drawing can be written in. */
export const formats: readonly Format[] = [svg]
