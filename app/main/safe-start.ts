import { existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'

/** The switch of a start without the graphics card, for machines on which the window stays blank. */
export const safeSwitch = '--safe-start'

const flagIn = (userData: string): string => join(userData, 'safe-start')

/**
 * Whether to start without the graphics card: asked for at this start, or remembered. It is read before anything else,
 * since a second start hands its switches to a program that is already running and ends.
 */
export const isSafeStart = (userData: string, args: readonly string[]): boolean =>
  args.includes(safeSwitch) || existsSync(flagIn(userData))

/** Remembers how to start from now on. Where that cannot be written, the next start alone is as asked. */
export const rememberSafeStart = (userData: string, isSafe: boolean): void => {
  try {
    mkdirSync(dirname(flagIn(userData)), { recursive: true })
    if (isSafe) writeFileSync(flagIn(userData), '')
    else rmSync(flagIn(userData), { force: true })
  } catch {
    // The switch of the restart says it as well.
  }
}
