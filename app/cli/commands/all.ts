import { check } from './check'
import type { Command } from './command'
import { draw } from './draw'
import { heat } from './heat'
import { issue } from './issue'
import { report } from './report'
import { samples } from './samples'
import { set } from './set'

/** Every command, in the order of the help. */
export const commands: readonly Command[] = [check, draw, report, issue, heat, set, samples]
