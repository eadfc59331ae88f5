import { runProgram } from './program'

/** The outer edge: a reader that went away is no fault, and a fault of ours is said in one line. */
process.stdout.on('error', (fault: NodeJS.ErrnoException) => {
  process.exit(fault.code === 'EPIPE' ? 0 : 70)
})

const io = {
  out: (text: string) => void process.stdout.write(text),
  err: (text: string) => void process.stderr.write(text),
}

try {
  process.exitCode = await runProgram(process.argv.slice(2), io)
} catch (fault) {
  io.err(`The program is at fault: ${fault instanceof Error ? fault.message : String(fault)}\n`)
  process.exitCode = 70
}
