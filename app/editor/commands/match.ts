import type { Language } from '../../../core/words'
import type { Chord, Command } from './command'

/** A pressed key, as an event of the window tells it. */
export type Pressed = {
  readonly key: string
  readonly code: string
  readonly ctrlKey: boolean
  readonly metaKey: boolean
  readonly shiftKey: boolean
  readonly altKey: boolean
}

/** Where a key was pressed: on which machine, and whether a text is being typed. */
export type Pressing = { readonly isMac: boolean; readonly isTyping: boolean }

/**
 * The command that a key stands for: first by what it types, so that the letter on the cap counts, and only if no
 * command has that letter by where it lies, so that a layout without Latin letters works as well.
 */
export const commandFor = <Id extends string>(
  commands: readonly Command<Id>[],
  pressed: Pressed,
  pressing: Pressing,
): Id | undefined => {
  const fits = (isKey: (it: Chord) => boolean) =>
    commands.find(
      it =>
        !(pressing.isTyping && it.notWhileTyping === true) &&
        it.chords.some(chord => isKey(chord) && isHeld(chord, pressed, pressing.isMac)),
    )
  const byKey = fits(it => it.key.toLowerCase() === pressed.key.toLowerCase())
  // A Latin letter that no command has is just that letter: its place must not make it another.
  const isLatin = /^[a-z]$/i.test(pressed.key)
  return (byKey ?? (isLatin ? undefined : fits(it => it.code === pressed.code)))?.id
}

/** How a chord is written in lists: `Ctrl Shift S`, on a Mac `⇧⌘S`. */
export const writeChord = ({ key, main, shift, alt }: Chord, language: Language, isMac: boolean): string => {
  const cap = caps[key]?.[language] ?? (key.length === 1 ? key.toUpperCase() : key)
  if (isMac) return [alt && '⌥', shift && '⇧', main && '⌘', cap].filter(Boolean).join('')
  const held = [main && heldName.main, alt && heldName.alt, shift && heldName.shift]
  return [...held.flatMap(it => (it ? it[language] : [])), cap].join(' ')
}

/** Commands whose name has all the typed words in it, in their order. */
export const commandsLike = <Id extends string>(
  commands: readonly Command<Id>[],
  typed: string,
  language: Language,
): readonly Command<Id>[] => {
  const asked = typed.toLowerCase().split(/\s+/).filter(Boolean)
  return commands.filter(it => asked.every(word => it.name[language].toLowerCase().includes(word)))
}

const isHeld = (chord: Chord, pressed: Pressed, isMac: boolean): boolean => {
  const [main, other] = isMac ? [pressed.metaKey, pressed.ctrlKey] : [pressed.ctrlKey, pressed.metaKey]
  // "+" needs Shift on many layouts, and on the number pad none: what it types is enough.
  const shiftCounts = /^[\p{L}\d]$|^..+$/u.test(chord.key)
  return (
    main === (chord.main === true) &&
    !other &&
    pressed.altKey === (chord.alt === true) &&
    (!shiftCounts || pressed.shiftKey === (chord.shift === true))
  )
}

const heldName = {
  main: { en: 'Ctrl', de: 'Strg' },
  alt: { en: 'Alt', de: 'Alt' },
  shift: { en: 'Shift', de: 'Umschalt' },
} as const

const caps: Readonly<Record<string, Readonly<Record<Language, string>>>> = {
  '-': { en: '−', de: '−' },
  Delete: { en: 'Del', de: 'Entf' },
  PageUp: { en: 'Page Up', de: 'Bild auf' },
  PageDown: { en: 'Page Down', de: 'Bild ab' },
  ArrowUp: { en: '↑', de: '↑' },
  ArrowDown: { en: '↓', de: '↓' },
}
