import { Command as Program, CommanderError, Option as ProgramOption } from 'commander'
import { commands } from './commands/all'
import type { Command } from './commands/command'
import type { ExitCode, Io } from './io'

/** Runs a command line (without program and script) and gives how it ended. Only faults of ours are thrown. */
export const runProgram = async (args: readonly string[], io: Io): Promise<ExitCode> => {
  let ended: ExitCode = 0
  const program = new Program('jambwright')
    .description('Designs and checks the joint between a window or door frame and the wall.')
    .addHelpText('after', exitHelp)
  program.showHelpAfterError('(--help says what can be typed)')
  quietly(program, io)
  for (const command of commands)
    quietly(declared(program.command(command.name), command), io).action(async (...all: unknown[]) => {
      const given = all.slice(0, command.takes.length).map(it => (it === undefined ? '' : String(it)))
      ended = await command.run(
        given,
        program.commands.find(it => it.name() === command.name)?.opts() ?? {},
        io,
      )
    })
  if (args.length === 0) {
    io.err(program.helpInformation() + exitHelp)
    return 2
  }
  return program.parseAsync(args.map(asNumber), { from: 'user' }).then(
    () => ended,
    (fault: unknown) => {
      // The parser throws to end early: after help with 0, after a wrong command line with its message written.
      if (fault instanceof CommanderError) return fault.exitCode === 0 ? 0 : 2
      throw fault
    },
  )
}

/** A number below zero is no option: it gets the minus sign that numbers are read with, `−12,5`. */
const asNumber = (typed: string): string => typed.replace(/^-(?=[\d.,])/, '−')

const declared = (program: Program, { says, takes, options }: Command): Program => {
  program.description(says)
  for (const it of takes) program.argument(it.mayMiss ? `[${it.name}]` : `<${it.name}>`, it.says)
  for (const it of options) {
    const option = new ProgramOption(it.flags, it.says)
    if (it.choices) option.choices(it.choices)
    if (it.usually !== undefined) option.default(it.usually)
    program.addOption(option)
  }
  return program
}

const quietly = (program: Program, io: Io): Program =>
  program.exitOverride().configureOutput({ writeOut: io.out, writeErr: io.err })

const exitHelp = `
Ends with 0 when every rule that applies is met or gives advice, 1 when a rule is not met, 3 when
none is broken but some are referred or unknown, 2 when the input is at fault, 70 when the program is.
`
