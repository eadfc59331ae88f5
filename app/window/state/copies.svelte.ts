import { copyAfter, saveProject } from '../../../core/detail'
import { filled, words } from '../../../core/words'
import type { Host } from '../../host'
import type { Board } from './board.svelte'
import type { File } from './file.svelte'
import type { Notes } from './notes.svelte'

/** Copies of unsaved work, kept while one works: never further behind than a few edits or half a minute. */
export type Copies = {
  /** when the last copy was written and read back; none: there is none of the present work */
  readonly keptAt: Date | undefined
  /** lets go of the copies of the present work: it is not wanted any more */
  readonly letGo: () => Promise<void>
}

type Of = { readonly board: Board; readonly file: File; readonly notes: Notes; readonly host: Host }

export const newCopies = (page: Window, { board, file, notes, host }: Of): Copies => {
  let keptAt: Date | undefined = $state.raw()
  let edits = 0
  let seen = { document: '', revision: 0 }
  let timer: number | undefined
  let writing: Promise<void> = Promise.resolve()
  let hasFailed = false
  let wasUnsaved = false

  const rest = (): void => {
    edits = 0
    page.clearTimeout(timer)
    timer = undefined
  }
  const keep = (): void => {
    rest()
    if (!file.isUnsaved) return
    const { document, stamp, name, token } = file
    const { project } = board.now
    const at = new Date()
    writing = writing.then(async () => {
      const done = await host.keepCopy({
        document, stamp, name, token, at: at.toISOString(), text: saveProject(project),
      }) // prettier-ignore
      if (done.kind === 'kept') {
        hasFailed = false
        if (document === file.document && file.isUnsaved) keptAt = at
        // Meanwhile it was saved or left: nobody waits for this copy.
        else await host.letGo(document)
      } else {
        keptAt = undefined
        // Said once until it works again: it stays on the screen until it is answered.
        if (!hasFailed)
          notes.tell({
            kind: 'not-met',
            say: filled(notKept, done.why),
            act: { say: saveNow, do: () => void file.save() },
          })
        hasFailed = true
      }
    })
  }

  $effect(() => {
    const { revision, gesture } = board.now
    const { document, isUnsaved } = file
    if (document !== seen.document) {
      rest()
      keptAt = undefined
      wasUnsaved = false
      seen = { document, revision: isUnsaved ? -1 : revision }
    }
    if (gesture) return
    if (!isUnsaved) {
      rest()
      seen = { document, revision }
      // Also copies that were kept before a crash: their work is in a file now.
      if (wasUnsaved) void host.letGo(document)
      wasUnsaved = false
      keptAt = undefined
      return
    }
    wasUnsaved = true
    if (revision === seen.revision) return
    seen = { document, revision }
    edits++
    if (edits >= copyAfter.edits) keep()
    else timer ??= page.setTimeout(keep, copyAfter.ms)
  })
  // A page in the background may be ended without a word.
  page.document.addEventListener('visibilitychange', () => {
    if (page.document.visibilityState === 'hidden' && edits > 0) keep()
  })

  return {
    get keptAt() {
      return keptAt
    },
    letGo: async () => {
      rest()
      await writing
      await host.letGo(file.document)
    },
  }
}

const notKept = words(
  'No copy for a crash can be kept: {0} Save your work to be sure of it.',
  'Keine Sicherungskopie möglich: {0} Bitte die Arbeit sichern.',
)
const saveNow = words('Save now', 'Jetzt sichern')
