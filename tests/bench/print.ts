import { benches } from './all'
import { timed } from './bench'
import { calibration } from './calibration'

/** Prints the times of all benches whose name has `asked` in it, and their ratio to the calibration loop. */
export const printBenches = async (asked: string): Promise<void> => {
  const unit = await timed(calibration)
  console.log(`${calibration.name}: ${unit.median_ms.toFixed(2)} ms\n`)
  console.log('  median   slowest 5 %   wanted   × calibration')
  for (const it of benches.filter(bench => bench.name.includes(asked))) {
    const { median_ms, slow_ms } = await timed(it)
    const columns = [
      `${median_ms.toFixed(2)} ms`.padStart(10),
      `${slow_ms.toFixed(2)} ms`.padStart(11),
      `${it.wanted_ms} ms`.padStart(9),
      (median_ms / unit.median_ms).toFixed(2).padStart(10),
    ]
    console.log(`${columns.join('  ')}     ${it.name}`)
  }
}
