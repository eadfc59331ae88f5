import type { Command } from './command'
import { editCommands } from './edit'
import { fileCommands } from './file'
import { viewCommands } from './view'

const all = [...fileCommands, ...editCommands, ...viewCommands]

/** The name of a command that exists: a window that handles all of these forgets none. */
export type CommandId = (typeof all)[number]['id']

/** Every command, in the order of a list. */
export const commands: readonly Command<CommandId>[] = all
