import '../no-eval'
import { formats } from '../../../core/export'
import type { WriteAsked, WriteTold } from './write-messages'

/** Writes one file and tells its bytes. The window ends the worker where writing is cancelled. */
addEventListener('message', (event: MessageEvent<WriteAsked>) => {
  const { format, sheets, fonts } = event.data
  const tell = (told: WriteTold) => postMessage(told)
  const of = formats.find(it => it.id === format)
  if (of === undefined) return tell({ kind: 'fault', report: `no format is called ${format}` })
  return void of.write(sheets, fonts).then(
    bytes => tell({ kind: 'written', bytes }),
    (error: unknown) =>
      tell({ kind: 'fault', report: error instanceof Error ? error.message : String(error) }),
  )
})
