import { getContext, setContext } from 'svelte'
import type { Words } from '../../../core/words'
import type { Host } from '../../host'
import type { Study } from '../heat/study.svelte'
import type { Board, Turn } from './board.svelte'
import type { Copies } from './copies.svelte'
import type { Editing } from './editing.svelte'
import type { File } from './file.svelte'
import type { Notes } from './notes.svelte'
import type { Readings } from './readings.svelte'
import type { Settings } from './settings.svelte'

/**
 * What every panel of the window may reach. Each member has one subject; none knows the others' business. There are two
 * that differ in what they read: what the hand moves is read as it is now, by the section and what lies on it; all else
 * follows a moment later, in steps.
 */
export type Desk = {
  readonly host: Host
  readonly board: Board
  readonly readings: Readings
  readonly study: Study
  readonly settings: Settings
  readonly file: File
  readonly copies: Copies
  readonly notes: Notes
  readonly look: Look
  readonly editing: Editing
  /** the words in the language of the window */
  readonly say: (it: Words) => string
}

/** What is looked at beyond the session: which view, which verdict is open. */
export type Look = {
  view: 'start' | 'joint' | 'sheet' | 'work' | 'teach'
  /** key of the open verdict; empty: none */
  openVerdict: string
  /** in the narrow arrangement, which panel is in front */
  tab: 'all-round' | 'parts' | 'fields' | 'verdicts'
  finding: boolean
  /** which of the head's own surfaces is open */
  settings: boolean
  about: boolean
}

const key = Symbol('desk')
const liveKey = Symbol('live desk')
const turnsKey = Symbol('desks of the panels that take turns')

type Read = Pick<Desk, 'board' | 'readings'>

/** Gives the desk of the window, that of what moves with the hand, and those of the panels that follow it in turns. */
export const giveDesk = (desk: Desk, live: Read, turns: Readonly<Record<Turn, Read>>): Desk => {
  setContext(liveKey, { ...desk, ...live })
  setContext(turnsKey, turns)
  return setContext(key, desk)
}

/** What is built in here reads what its panel shows in its turn. */
export const takeTurn = (turn: Turn): void => {
  setContext(key, { ...theDesk(), ...getContext<Readonly<Record<Turn, Read>>>(turnsKey)[turn] })
}

/** The desk of the panels: while something moves, what they read follows in steps. */
export const theDesk = (): Desk => getContext<Desk>(key)

/** The desk of what moves with the hand: the section, what lies on it and over it. */
export const theLiveDesk = (): Desk => getContext<Desk>(liveKey)
