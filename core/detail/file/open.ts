import { z } from 'zod'
import { type Problem, ok, type Result, refused } from '../../units'
import { filled, isSome, same, type Words, words } from '../../words'
import type { Project } from '../model'
import { upgrades } from '../versions/all'
import type { Plain } from '../versions/upgrade'
import { overCaps } from './caps'
import { consistencyProblems } from './consistent'
import { withSoundPhotos } from './photos'
import { digestOfRead } from './save'
import { projectSchema } from './schema'

/** The version that this program writes. */
export const formatVersion = 2

/** A project out of a file. `readOnly`: a newer program wrote it, and saving would lose what this one does not know. */
export type Opened = {
  readonly project: Project
  readonly readOnly: boolean
  readonly notes: readonly Words[]
}

/**
 * Reads a project from the text of a file. Nothing is thrown whatever the text is: every problem is said with its place.
 * A valid file whose digest does not fit opens with a note, since somebody has changed it by hand.
 */
export const openProject = (text: string): Result<Opened> => {
  const cap = overCaps(text)
  if (cap) return refused(cap)
  const raw = parsed(text)
  if (!raw.ok) return raw
  const tag = formatOf(raw.value)
  if (!tag.ok) return tag
  const newer = tag.value.version > formatVersion
  const { digest, ...members } = raw.value
  const rest = upgraded(members, tag.value.version)
  const found = newer ? lenient(rest) : projectSchema.safeParse(rest)
  if (!found.success) return refusedBy(found.error)
  const wrong = consistencyProblems(found.data)
  if (isSome(wrong)) return refused(...wrong)
  const sound = withSoundPhotos(found.data)
  const notes: Words[] = [...sound.notes]
  if (newer) notes.push(words('A newer program wrote this file: it opens for reading only.', 'Ein neueres Programm hat diese Datei geschrieben: sie öffnet nur zum Lesen.')) // prettier-ignore
  else if (tag.value.version < formatVersion) notes.push(words('An older program wrote this file: saving brings it up to date.', 'Ein älteres Programm hat diese Datei geschrieben: Speichern bringt sie auf den Stand.')) // prettier-ignore
  else if (digest !== digestOfRead(found.data)) notes.push(words('This file was changed outside this program.', 'Diese Datei wurde außerhalb dieses Programms geändert.')) // prettier-ignore
  return ok({ project: sound.project, readOnly: newer, notes })
}

/** A file of an older version, brought up to this one step by step. */
const upgraded = (members: Plain, version: number): Plain =>
  upgrades.filter(it => it.from >= version).reduce((so, step) => step.apply(so), members)

export const parsed = (text: string): Result<Record<string, unknown>> => {
  // A byte order mark at the start is no part of the text.
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text
  try {
    const value: unknown = JSON.parse(body)
    const found = z.record(z.string(), z.unknown()).safeParse(value)
    return found.success ? ok(found.data) : refused(notOurs)
  } catch (error) {
    // JSON.parse says the place in its message; the words round it are ours.
    const place = /position (\d+)/.exec(error instanceof Error ? error.message : '')?.[1]
    const at = place === undefined ? 'end of file' : `line ${body.slice(0, Number(place)).split('\n').length}`
    return refused({
      at,
      say: words(
        'the file is damaged: this is no valid JSON',
        'die Datei ist beschädigt: kein gültiges JSON',
      ),
    })
  }
}

const notOurs: Problem = {
  at: 'file',
  say: words('this is no Jambwright file', 'das ist keine Jambwright-Datei'),
}

const formatTag = z.looseObject({
  format: z.looseObject({
    name: z.literal('jambwright'),
    version: z.int().min(1),
    readableFrom: z.int().min(1),
  }),
})

const formatOf = (raw: Record<string, unknown>): Result<{ readonly version: number }> => {
  const found = formatTag.safeParse(raw)
  if (!found.success) return refused(notOurs)
  const { version, readableFrom } = found.data.format
  if (version > formatVersion && readableFrom > formatVersion) {
    const say = words('a newer program wrote this file (version {0}); this one reads up to version {1}', 'ein neueres Programm hat diese Datei geschrieben (Version {0}); dieses liest bis Version {1}') // prettier-ignore
    return refused({ at: 'format.version', say: filled(say, `${version}`, `${formatVersion}`) })
  }
  return ok({ version })
}

/** Reads what it knows of a newer file: members that it does not know are left aside, one layer at a time. */
const lenient = (raw: unknown): z.ZodSafeParseResult<Project> => {
  const first = projectSchema.safeParse(raw)
  if (first.success) return first
  const unknown = first.error.issues.filter(it => it.code === 'unrecognized_keys')
  if (unknown.length === 0) return first
  return lenient(unknown.reduce((so, it) => without(so, it.path, it.keys), raw))
}

const without = (value: unknown, path: readonly PropertyKey[], keys: readonly string[]): unknown => {
  const [next, ...rest] = path
  if (Array.isArray(value)) return value.map((it: unknown, i) => (i === next ? without(it, rest, keys) : it))
  if (typeof value !== 'object' || value === null) return value
  const entries = Object.entries(value)
  return Object.fromEntries(
    next === undefined
      ? entries.filter(([key]) => !keys.includes(key))
      : entries.map(([key, it]) => [key, key === next ? without(it, rest, keys) : it]),
  )
}

/** What a schema found wrong, each with its place and in words. */
export const refusedBy = (error: z.ZodError): Result<never> => {
  const problems = error.issues.map((it): Problem => ({
    at: it.path.map(String).join('.') || 'file',
    say: inWords(it),
  }))
  return isSome(problems) ? { ok: false, problems } : refused(notOurs)
}

/** What a schema found, in words. The schema's own message stands where we have no better one. */
const inWords = (issue: z.core.$ZodIssue): Words => {
  switch (issue.code) {
    case 'invalid_type':
      return filled(words('{0} is needed here', 'hier wird gebraucht: {0}'), issue.expected)
    case 'unrecognized_keys':
      return filled(words('unknown here: {0}', 'hier unbekannt: {0}'), issue.keys.join(', ').slice(0, 200))
    case 'too_small':
      return filled(
        issue.inclusive === false
          ? words('more than {0} is needed', 'mehr als {0}')
          : words('at least {0} is needed', 'mindestens {0}'),
        `${issue.minimum}`,
      )
    case 'too_big':
      return filled(words('at most {0} is possible', 'höchstens {0}'), `${issue.maximum}`)
    case 'invalid_value':
      return filled(words('one of: {0}', 'eines von: {0}'), issue.values.map(String).join(', ').slice(0, 300))
    case 'custom':
      return filled(words('not known here: {0}', 'hier nicht bekannt: {0}'), issue.message.slice(0, 300))
    default:
      return same(issue.message.slice(0, 300))
  }
}
