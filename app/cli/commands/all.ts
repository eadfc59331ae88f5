import { check } from './check'
import type { Command } from './command'
import { draw } from './draw'
import { edit } from './edit'
import { heat } from './heat'
import { issue } from './issue'
import { photo } from './photo'
import { report } from './report'
import { samples } from './samples'
import { set } from './set'
import { vapour } from './vapour'

/** Every command, in the order of the help. */
export const commands: readonly Command[] = [
  check,
  draw,
  report,
  issue,
  heat,
  vapour,
  set,
  edit,
  photo,
  samples,
]
