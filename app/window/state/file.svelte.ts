import { extension, openProject, type Project, samples, saveProject } from '../../../core/detail'
import { type Words, filled, same, words } from '../../../core/words'

import { isUnsaved } from '../../editor'
import type { Host, HostFile } from '../../host'
import type { Board } from './board.svelte'
import type { Notes } from './notes.svelte'

/** The file behind the project: its name, whether it holds the present work, and what can be done with it. */
export type File = {
  readonly name: string
  /** how many projects were opened so far: the window begins anew with each */
  readonly opened: number
  readonly savedAt: Date | undefined
  readonly isUnsaved: boolean
  readonly isReadOnly: boolean
  /** a question that waits for its answer: unsaved work would be lost */
  readonly asks: { readonly answer: (to: 'save' | 'drop' | 'cancel') => void } | undefined
  readonly open: () => Promise<void>
  readonly openSample: (at: number) => Promise<void>
  readonly take: (file: HostFile) => Promise<void>
  readonly save: () => Promise<boolean>
  readonly saveAs: () => Promise<boolean>
  readonly write: (name: string, kind: string, bytes: Uint8Array) => Promise<void>
  /** asks about unsaved work; true: go on */
  readonly mayLeave: () => Promise<boolean>
}

export const newFile = (board: Board, notes: Notes, host: Host): File => {
  let name = $state(`${samples[0]?.file ?? 'joint'}.${extension}`)
  let token = ''
  let opened = $state(1)
  let savedAt: Date | undefined = $state.raw()
  let isReadOnly = $state(false)
  let asks: File['asks'] = $state.raw()

  const begin = (project: Project, at: { name: string; token: string; readOnly: boolean }): void => {
    board.act({ kind: 'open', project })
    name = at.name
    token = at.token
    isReadOnly = at.readOnly
    savedAt = undefined
    opened++
  }

  const write = async (asCopy: boolean): Promise<boolean> => {
    const { revision, project } = board.now
    const bytes = new TextEncoder().encode(saveProject(project))
    const done =
      asCopy || token === '' || isReadOnly
        ? await host.saveAs(name, extension, bytes)
        : await host.save(token, name, bytes)
    if (done.kind === 'cancelled') return false
    if (done.kind === 'failed') {
      notes.tell({
        kind: 'not-met',
        say: filled(notSaved, done.why),
        act: { say: saveElsewhere, do: () => void write(true) },
      })
      return false
    }
    name = done.name
    token = done.token
    isReadOnly = false
    savedAt = new Date()
    board.act({ kind: 'saved', revision })
    notes.tell({ kind: 'met', say: host.kind === 'desktop' || token !== '' ? savedAndRead : downloaded })
    return true
  }

  const mayLeave = async (): Promise<boolean> => {
    if (!isUnsaved(board.now)) return true
    const answer = await new Promise<'save' | 'drop' | 'cancel'>(answered => {
      asks = { answer: answered }
    })
    asks = undefined
    return answer === 'drop' || (answer === 'save' && (await write(false)))
  }

  const take = async (file: HostFile): Promise<void> => {
    const read = openProject(new TextDecoder().decode(file.bytes))
    if (!read.ok) {
      const [first] = read.problems
      const more = read.problems.length - 1
      const rest = more === 0 ? same('') : filled(andMore, `${more}`)
      notes.tell({ kind: 'not-met', say: filled(notOpened, file.name, first.at, first.say, rest) })
      return
    }
    if (!(await mayLeave())) return
    begin(read.value.project, { name: file.name, token: file.token, readOnly: read.value.readOnly })
    for (const say of read.value.notes) notes.tell({ kind: 'advice', say })
  }

  return {
    get name() {
      return name
    },
    get opened() {
      return opened
    },
    get savedAt() {
      return savedAt
    },
    get isUnsaved() {
      return isUnsaved(board.now)
    },
    get isReadOnly() {
      return isReadOnly
    },
    get asks() {
      return asks
    },
    open: async () => {
      try {
        const file = await host.open()
        if (file !== undefined) await take(file)
      } catch (error) {
        notes.tell({ kind: 'not-met', say: same(error instanceof Error ? error.message : String(error)) })
      }
    },
    openSample: async at => {
      const sample = samples[at]
      if (sample === undefined || !(await mayLeave())) return
      begin(sample.project, { name: `${sample.file}.${extension}`, token: '', readOnly: false })
    },
    take,
    save: () => write(false),
    saveAs: () => write(true),
    write: async (to, kind, bytes) => {
      const done = await host.saveAs(to, kind, bytes)
      if (done.kind === 'written') notes.tell({ kind: 'met', say: filled(exported, done.name) })
      if (done.kind === 'failed') notes.tell({ kind: 'not-met', say: filled(notSaved, done.why) })
    },
    mayLeave,
  }
}

const notSaved = words(
  'Not saved: {0}. Your work is kept here.',
  'Nicht gesichert: {0}. Die Arbeit bleibt hier.',
)
const saveElsewhere = words('Save elsewhere', 'Anderswo sichern')
const savedAndRead = words('Saved and read back', 'Gesichert und zurückgelesen')
const downloaded = words('Handed to the browser as a download', 'Dem Browser als Download übergeben')
const exported = words('Written: {0}', 'Geschrieben: {0}')
const andMore = words(' (and {0} more)', ' (und {0} weitere)')
const notOpened: Words = words('{0} was not opened. {1}: {2}{3}', '{0} wurde nicht geöffnet. {1}: {2}{3}')
