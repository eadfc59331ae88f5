import { dirname } from 'node:path'
import { fileURLToPath } from 'node:url'
import { startProgram } from './program'

/** The built program: this file lies in `out/main`. */
const outFolder = dirname(dirname(fileURLToPath(import.meta.url)))

startProgram({ outFolder, platform: process.platform, args: process.argv.slice(1) })
