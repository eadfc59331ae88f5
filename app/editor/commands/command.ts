import type { Words } from '../../../core/words'

/** A combination of keys. `main` is Ctrl, on a Mac Cmd. Letters are lower case. */
export type Chord = {
  /** what the key types, or its name: `z`, `+`, `ArrowUp`, `F8` */
  readonly key: string
  /** where the key lies, for layouts on which no key types `key` */
  readonly code: string
  readonly main?: true
  readonly shift?: true
  readonly alt?: true
}

/** Something that can be asked for by name or by keys, anywhere in the window. What it does is the window's business. */
export type Command<Id extends string = string> = {
  readonly id: Id
  readonly name: Words
  /** the first is the one that lists show */
  readonly chords: readonly Chord[]
  /** a single letter: it must not act while something is typed */
  readonly notWhileTyping?: true
}

/** The chord of a letter, digit or function key, whose place on the keyboard follows from its name. */
export const chord = (key: string, held: Omit<Chord, 'key' | 'code'> = {}): Chord => ({
  key,
  code: /^[a-z]$/.test(key)
    ? `Key${key.toUpperCase()}`
    : /^\d$/.test(key)
      ? `Digit${key}`
      : (codes[key] ?? key),
  ...held,
})

const codes: Readonly<Record<string, string>> = { '+': 'Equal', '-': 'Minus', ',': 'Comma', '.': 'Period' }
