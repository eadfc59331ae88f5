import type { Drawing } from '../../../core/drawing'
import { type Format, projectSheets } from '../../../core/export'
import type { Project } from '../../../core/detail'
import { isSome } from '../../../core/words'
import { fontsNamed } from './fonts'
import type { WriteAsked, WriteTold } from './write-messages'

/** A file that is being written: how many of its sheets are drawn, and a way to stop. */
export type Writing = {
  readonly now: { readonly done: number; readonly of: number } | undefined
  /** the bytes of a file; nothing where it was cancelled; throws what went wrong */
  readonly write: (job: Job) => Promise<Uint8Array | undefined>
  readonly cancel: () => void
}

/** What goes into a file: sheets are drawn one by one, so that the window answers in between. */
export type Job = {
  readonly format: Format
  readonly project: Project
  readonly model: boolean
  readonly sheets: readonly (() => readonly Drawing[])[]
}

export const newWriting = (): Writing => {
  let now: { done: number; of: number } | undefined = $state.raw()
  let worker: Worker | undefined
  let stop: (() => void) | undefined
  const inWorker = (asked: WriteAsked): Promise<Uint8Array | undefined> =>
    new Promise((done, fail) => {
      worker = new Worker(new URL('./write-worker.ts', import.meta.url), { type: 'module' })
      stop = () => done(undefined)
      worker.addEventListener('message', ({ data }: MessageEvent<WriteTold>) =>
        data.kind === 'written' ? done(data.bytes) : fail(new Error(data.report)),
      )
      worker.addEventListener('error', event => fail(new Error(event.message || 'the writer did not start')))
      worker.postMessage(asked)
    })
  const end = () => {
    worker?.terminate()
    worker = undefined
    stop = undefined
    now = undefined
  }
  return {
    get now() {
      return now
    },
    write: async ({ format, project, model, sheets }) => {
      now = { done: 0, of: sheets.length }
      const begun = () => now !== undefined
      try {
        const drawings: Drawing[] = []
        for (const draw of sheets) {
          // the window paints how far it is, and hears whether to stop
          await new Promise(done => setTimeout(done))
          if (!begun()) return undefined
          drawings.push(...draw())
          now = { done: (now?.done ?? 0) + 1, of: sheets.length }
        }
        if (!isSome(drawings)) return undefined
        const fonts = await fontsNamed(format.fonts)
        if (!begun()) return undefined
        return await inWorker({
          format: format.id,
          sheets: projectSheets(project, drawings, { model }),
          fonts,
        })
      } finally {
        end()
      }
    },
    cancel: () => {
      now = undefined
      stop?.()
    },
  }
}
