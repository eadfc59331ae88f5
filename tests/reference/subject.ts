import { readFileSync, readdirSync } from 'node:fs'

/** One expected value beside what came out, with the tolerance it is held to. */
export type Compared = {
  readonly what: string
  readonly value: number
  readonly got: number
  readonly within: number
}

export const holds = ({ value, got, within }: Compared): boolean => Math.abs(got - value) <= within

/** A published case, ready to be run as it is and with its named input spoiled. */
export type ReferenceCase = {
  readonly id: string
  readonly title: string
  readonly source: string
  readonly run: () => readonly Compared[]
  readonly runSpoiled: () => readonly Compared[]
}

/** The texts of the case files of a subject, in order. */
export const caseFiles = (subject: string): readonly { readonly id: string; readonly text: string }[] => {
  const folder = new URL(`cases/${subject}/`, import.meta.url)
  return readdirSync(folder)
    .filter(name => name.endsWith('.json'))
    .toSorted()
    .map(name => ({ id: name.replace('.json', ''), text: readFileSync(new URL(name, folder), 'utf8') }))
}
