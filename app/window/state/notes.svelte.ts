import type { Words } from '../../../core/words'

/** Something the window has to say: what went well goes by itself, what failed stays until it is answered. */
export type Note = {
  readonly id: number
  readonly kind: 'met' | 'not-met' | 'advice'
  readonly say: Words
  readonly act?: { readonly say: Words; readonly do: () => void }
}

/** What is shown, and what is said aloud: politely, or at once. */
export type Notes = {
  readonly shown: readonly Note[]
  readonly polite: Words | undefined
  readonly urgent: Words | undefined
  readonly tell: (note: Omit<Note, 'id'>) => void
  readonly drop: (id: number) => void
  readonly announce: (say: Words) => void
}

/** How long a note of something that went well stays. *Ours*: long enough to be read twice. */
const stays_ms = 6000

export const newNotes = (): Notes => {
  let shown: readonly Note[] = $state.raw([])
  let polite: Words | undefined = $state.raw()
  let urgent: Words | undefined = $state.raw()
  let next = 1
  const drop = (id: number): void => {
    shown = shown.filter(it => it.id !== id)
  }
  return {
    get shown() {
      return shown
    },
    get polite() {
      return polite
    },
    get urgent() {
      return urgent
    },
    tell: note => {
      const id = next++
      shown = [...shown.slice(-2), { ...note, id }]
      if (note.kind === 'met') setTimeout(() => drop(id), stays_ms)
      if (note.kind === 'not-met') urgent = note.say
      else polite = note.say
    },
    drop,
    announce: say => {
      polite = say
    },
  }
}
