import {
  afterOutsideChange,
  beginWith,
  contentDigest,
  digestOf,
  extension,
  type Opened,
  openProject,
  type Project,
  type RecentAbout,
  samples,
  saveProject,
  type WallPlan,
} from '../../../core/detail'
import { type Words, filled, same } from '../../../core/words'
import { isUnsaved } from '../../editor'
import type { Host, HostFile, KeptCopy, Read } from '../../host'
import type { Board } from './board.svelte'
import {
  andMore,
  cannotOpen,
  changedElsewhere,
  downloaded,
  exported,
  notOpened,
  notSaved,
  readItAgain,
  saveElsewhere,
  savedAndRead,
} from './file-notes'
import type { Notes } from './notes.svelte'
import { projectIn } from './project-in'

/** A question that waits for its answer. */
export type Question<Answer> = { readonly answer: (to: Answer) => void }

/** The file behind the project: its name, whether it holds the present work, and what can be done with it. */
export type File = {
  readonly name: string
  /** how many projects were opened so far, none at first: the window begins anew with each */
  readonly opened: number
  readonly savedAt: Date | undefined
  readonly isUnsaved: boolean
  readonly isReadOnly: boolean
  /** names the open work as long as it is open, whatever file it goes to */
  readonly document: string
  /** digest of the project that its file holds; empty: it has no file */
  readonly stamp: string
  readonly token: string
  /** unsaved work would be lost */
  readonly asks: Question<'save' | 'drop' | 'cancel'> | undefined
  /** somebody else has changed the file meanwhile */
  readonly clash: Question<'mine' | 'theirs' | 'copy' | 'cancel'> | undefined
  readonly open: () => Promise<void>
  /** lets the user choose another file and reads it, without opening it in the place of what is open */
  readonly readOther: () => Promise<{ readonly name: string; readonly project: Project } | undefined>
  readonly openRecent: (token: string) => Promise<void>
  readonly openSample: (at: number) => Promise<void>
  /** a new joint in a wall, under a practice */
  readonly begin: (plan: WallPlan, practice: string) => Promise<void>
  readonly take: (read: Read) => Promise<void>
  /** opens a copy that a crash left; it counts as unsaved */
  readonly recover: (copy: KeptCopy) => Promise<void>
  readonly save: () => Promise<boolean>
  readonly saveAs: () => Promise<boolean>
  readonly write: (name: string, kind: string, bytes: Uint8Array) => Promise<void>
  /** asks about unsaved work; true: go on */
  readonly mayLeave: () => Promise<boolean>
  /** looks whether the file was changed elsewhere, and says so or asks */
  readonly look: () => Promise<void>
}

/** Where a project comes from: `holds` are the bytes of its file, none where it has no file. */
type Origin = {
  readonly name: string
  readonly token: string
  readonly readOnly: boolean
  readonly holds?: Uint8Array
  /** a copy goes on under the name that it was kept by */
  readonly document?: string
}

/** Saved as this revision, nothing is saved: no session ever has it. */
const noRevision = -1

export const newFile = (board: Board, notes: Notes, host: Host, about: () => RecentAbout): File => {
  let name = $state('')
  let token = $state('')
  let opened = $state(0)
  let savedAt: Date | undefined = $state.raw()
  let isReadOnly = $state(false)
  let document = $state('')
  let stamp = $state('')
  let asks: File['asks'] = $state.raw()
  let clash: File['clash'] = $state.raw()
  /** digest of the bytes that were last read from the file or written to it */
  let known = ''
  /** digest of what was found in the file and is spoken of already */
  let told = ''
  let release = (): void => undefined

  const failed = (say: Words): void => notes.tell({ kind: 'not-met', say })

  const begin = (project: Project, from: Origin): void => {
    if (document !== '') void host.letGo(document)
    release()
    board.act({ kind: 'open', project })
    name = from.name
    token = from.token
    isReadOnly = from.readOnly
    savedAt = undefined
    document = from.document ?? crypto.randomUUID()
    release = host.hold(document)
    stamp = from.holds === undefined ? '' : digestOf(project)
    known = from.holds === undefined ? '' : contentDigest(from.holds)
    told = ''
    opened++
    remember()
  }
  const remember = (): void => {
    if (token !== '') void host.remember(token, about())
  }

  /** What the file holds now, if that can be seen and is something else than what is known of it. */
  const elsewhere = async (): Promise<'nothing' | 'tell' | 'ask'> => {
    if (token === '' || known === '') return 'nothing'
    const bytes = await host.peek(token)
    const found = bytes && contentDigest(bytes)
    if (found === told) return 'nothing'
    const then = afterOutsideChange({ known, found, isUnsaved: isUnsaved(board.now) })
    if (then !== 'nothing') told = found ?? ''
    return then
  }
  const readAgain = async (): Promise<void> => {
    const read = await host.openRecent(token)
    if (read.kind === 'read') await openIn(read.file, 'at once')
    if (read.kind === 'failed') failed(filled(cannotOpen, read.why))
  }
  /** Asks whose version counts. `true`: this one, in its place. */
  const settleClash = async (): Promise<boolean> => {
    const answer = await new Promise<'mine' | 'theirs' | 'copy' | 'cancel'>(answered => {
      clash = { answer: answered }
    })
    clash = undefined
    if (answer === 'theirs') await readAgain()
    if (answer === 'copy') await put('elsewhere')
    return answer === 'mine'
  }

  const put = async (where: 'in place' | 'elsewhere'): Promise<boolean> => {
    const { revision, project } = board.now
    const bytes = new TextEncoder().encode(saveProject(project))
    const inPlace = where === 'in place' && token !== '' && !isReadOnly
    const done = inPlace ? await host.save(token, name, bytes) : await host.saveAs(name, extension, bytes)
    if (done.kind === 'cancelled') return false
    if (done.kind === 'failed') {
      notes.tell({
        kind: 'not-met',
        say: filled(notSaved, done.why),
        act: { say: saveElsewhere, do: () => void put('elsewhere') },
      })
      return false
    }
    name = done.name
    token = done.token
    isReadOnly = false
    savedAt = new Date()
    stamp = digestOf(project)
    known = contentDigest(bytes)
    told = ''
    board.act({ kind: 'saved', revision })
    remember()
    notes.tell({ kind: 'met', say: host.kind === 'desktop' || token !== '' ? savedAndRead : downloaded })
    return true
  }
  const save = async (): Promise<boolean> => {
    told = ''
    return (await elsewhere()) === 'nothing' || (await settleClash()) ? put('in place') : false
  }

  const mayLeave = async (): Promise<boolean> => {
    if (opened === 0 || !isUnsaved(board.now)) return true
    // A question is open already: whatever came second waits for nobody.
    if (asks !== undefined || clash !== undefined) return false
    const answer = await new Promise<'save' | 'drop' | 'cancel'>(answered => {
      asks = { answer: answered }
    })
    asks = undefined
    return answer === 'drop' || (answer === 'save' && (await save()))
  }

  /** What is in the bytes of a file; nothing where they hold no project, which is said. */
  const readIn = async (file: Pick<HostFile, 'name' | 'bytes'>): Promise<Opened | undefined> => {
    const read = await projectIn(file.bytes)
    if (read.ok) return read.value
    const [first] = read.problems
    const more = read.problems.length - 1
    const rest = more === 0 ? same('') : filled(andMore, `${more}`)
    failed(filled(notOpened, file.name, first.at, first.say, rest))
    return undefined
  }

  /** Opens the bytes of a file: a project in its place, a sheet that carries one as a new project. */
  const openIn = async (file: HostFile, when: 'at once' | 'after asking'): Promise<void> => {
    const isSheet = !file.name.toLowerCase().endsWith(`.${extension}`)
    const read = await readIn(file)
    if (read === undefined) return
    if (when === 'after asking' && !(await mayLeave())) return
    const { project, readOnly, notes: says } = read
    begin(
      project,
      isSheet
        ? { name: `${file.name.replace(/\.[^.]*$/, '')}.${extension}`, token: '', readOnly }
        : { name: file.name, token: file.token, readOnly, holds: file.bytes },
    )
    for (const say of says) notes.tell({ kind: 'advice', say })
  }
  const take = async (read: Read): Promise<void> => {
    if (read.kind === 'failed') failed(filled(cannotOpen, read.why))
    if (read.kind === 'read') await openIn(read.file, 'after asking')
  }
  const fresh = async (project: () => Project, as: string): Promise<void> => {
    if (await mayLeave()) begin(project(), { name: `${as}.${extension}`, token: '', readOnly: false })
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
      return opened > 0 && isUnsaved(board.now)
    },
    get isReadOnly() {
      return isReadOnly
    },
    get document() {
      return document
    },
    get stamp() {
      return stamp
    },
    get token() {
      return token
    },
    get asks() {
      return asks
    },
    get clash() {
      return clash
    },
    open: async () => take(await host.open()),
    readOther: async () => {
      const chosen = await host.open()
      if (chosen.kind === 'failed') failed(filled(cannotOpen, chosen.why))
      const read = chosen.kind === 'read' ? await readIn(chosen.file) : undefined
      return read && chosen.kind === 'read' ? { name: chosen.file.name, project: read.project } : undefined
    },
    openRecent: async at => take(await host.openRecent(at)),
    openSample: async at => {
      const sample = samples[at]
      if (sample !== undefined) await fresh(() => sample.project, sample.file)
    },
    begin: (plan, practice) => fresh(() => beginWith(plan, practice), plan.id),
    take,
    recover: async copy => {
      const read = openProject(copy.text)
      if (!read.ok || !(await mayLeave())) return
      const bytes = await host.peek(copy.token)
      const held = bytes && (await projectIn(bytes))
      const isSame = held?.ok === true && digestOf(held.value.project) === copy.stamp
      const { name, token, document } = copy
      begin(read.value.project, { name, token, document, readOnly: false })
      stamp = copy.stamp
      // A file that has changed since, or cannot be seen, is another one: saving then asks.
      if (bytes !== undefined) known = isSame ? contentDigest(bytes) : contentDigest(new Uint8Array())
      board.act({ kind: 'saved', revision: noRevision })
    },
    save,
    saveAs: () => put('elsewhere'),
    write: async (to, kind, bytes) => {
      const done = await host.saveAs(to, kind, bytes)
      if (done.kind === 'written') notes.tell({ kind: 'met', say: filled(exported, done.name) })
      if (done.kind === 'failed') failed(filled(notSaved, done.why))
    },
    mayLeave,
    look: async () => {
      if (asks !== undefined || clash !== undefined) return
      const then = await elsewhere()
      if (then === 'tell')
        notes.tell({
          kind: 'advice',
          say: filled(changedElsewhere, name),
          act: { say: readItAgain, do: () => void readAgain() },
        })
      if (then === 'ask' && (await settleClash())) await put('in place')
    },
  }
}
