import { expect, test } from 'vitest'
import { applyEdit, openProject, type Project, samples, saveProject } from '../../core/detail'
import { aPhoto, photographed } from '../given/photographed'
import { type Random, randomFrom } from '../given/random'

const texts = samples.flatMap(({ project }, at) => [
  saveProject(project),
  ...(at % 5 === 0 ? [saveProject(photographed(project))] : []),
])

/** One kind of damage to a text. */
const damages: readonly ((text: string, random: Random) => string)[] = [
  (text, random) => text.slice(0, random.whole(0, text.length)),
  (text, random) => {
    const at = random.whole(0, text.length - 1)
    return text.slice(0, at) + String.fromCharCode(random.whole(0, 65535)) + text.slice(at + 1)
  },
  (text, random) => {
    const at = random.whole(0, text.length - 1)
    return text.slice(0, at) + '\0'.repeat(random.whole(1, 400)) + text.slice(at + 200)
  },
  (text, random) => {
    const lines = text.split('\n')
    const at = random.whole(0, lines.length - 1)
    return lines.toSpliced(at, random.whole(1, 5)).join('\n')
  },
  (text, random) => {
    const lines = text.split('\n')
    const from = random.whole(0, lines.length - 1)
    return lines.toSpliced(random.whole(0, lines.length - 1), 0, lines[from] ?? '').join('\n')
  },
  (text, random) =>
    text.replace(/"value": [\d.]+/g, it =>
      random.chance(0.1) ? `"value": ${random.one(['-1', '1e308', '0', 'null', '"x"', '[]', '1e-9'])}` : it,
    ),
  (text, random) => text.replace(/"[a-zA-Z_]+":/g, it => (random.chance(0.02) ? '"__proto__":' : it)),
  (text, random) =>
    text.replace(/"[a-z]+-\d+"/g, it =>
      random.chance(0.05) ? `"${random.one(['wall-1', 'seal-8', 'constructor', ''])}"` : it,
    ),
  (text, random) => text.replace('"note":', `"note": ${'['.repeat(random.whole(1, 3000))}`),
  // a photo whose bytes, whose name or whose place in the file is spoiled
  (text, random) =>
    text.replace(/"(sha256:[0-9a-f]{64})": "([^"]+)"/, (_, digest: string, bytes: string) =>
      random.one([
        `"${digest}": "${bytes.slice(4)}"`,
        `"${digest.slice(0, -1)}": "${bytes}"`,
        `"${digest}": "${'A'.repeat(2_000_000)}"`,
        `"x": "${bytes}"`,
      ]),
    ),
  (text, random) =>
    text.replace(/"photo": "sha256:./g, it => (random.chance(0.5) ? `${it}${it}` : `"photo": "sha256:0`)),
  (text, random) => `${random.one(['%PDF-1.7', 'PK\u0003\u0004', '<svg/>', '\uFEFF'])}${text}`,
]

test('5,000 damaged files: each opens or says what is wrong, nothing is thrown', () => {
  const random = randomFrom(7)
  let refused = 0
  for (let i = 0; i < 5000; i++) {
    const damage = damages[i % damages.length]
    const text = damage?.(texts[i % texts.length] ?? '', random) ?? ''
    const found = openProject(text)
    if (found.ok) {
      // what has opened is sound: it can be written again as it is
      if (i % 50 === 0) expect(openProject(saveProject(found.value.project)).ok).toBe(true)
      continue
    }
    refused++
    for (const problem of found.problems) {
      expect(problem.at).not.toBe('')
      expect(problem.say.en).not.toBe('')
      expect(problem.say.de).not.toBe('')
    }
  }
  // most damage is seen; what is not seen left a valid project
  expect(refused).toBeGreaterThan(3500)
})

test('a photo that is missing or damaged is said by what it shows, and everything else opens', () => {
  const [sample] = samples
  if (sample === undefined) throw new Error('there are no samples')
  const project = photographed(sample.project)
  const text = saveProject(project)
  const notesOf = (changed: string): readonly string[] => {
    const opened = openProject(changed)
    return opened.ok
      ? opened.value.notes.map(it => it.en)
      : opened.problems.map(it => `${it.at}: ${it.say.en}`)
  }
  const [digest = '', bytes = ''] = Object.entries(project.photos ?? {})[0] ?? []
  expect(notesOf(text)).toEqual([])
  expect(notesOf(text.replace(`"${bytes}"`, `"${aPhoto([9])}"`)).slice(0, 2)).toEqual([
    'The photo “old putty” is damaged and was left out.',
    'The photo “the same” is damaged and was left out.',
  ])
  const { photos: _, ...without } = project
  expect(notesOf(saveProject(without))).toContain('The photo “loose sill” is not in this file.')
  expect(notesOf(text.replace(`"${digest}":`, '"somewhere":'))).not.toEqual([])
  // what is left out leaves the pins: the photo can be found again
  const opened = openProject(saveProject(without))
  expect(opened.ok && Object.values(opened.value.project.openings)[0]?.photos).toHaveLength(3)
})

test('a photo that is no JPEG, too large, or one too many is refused when it is pinned', () => {
  const [sample] = samples
  if (sample === undefined) throw new Error('there are no samples')
  const [opening = ''] = Object.keys(sample.project.openings)
  const pinned = (project: Project, jpeg: string) =>
    applyEdit(project, { kind: 'pin-photo', opening, jpeg, note: '' })
  const big = (first: number) => aPhoto(Buffer.alloc(1_048_000, first))
  const refusalOf = (project: Project, jpeg: string) => {
    const found = pinned(project, jpeg)
    return found.ok ? 'taken' : found.problems[0].say.en
  }
  expect(refusalOf(sample.project, 'no base64 at all')).toBe('this is no whole JPEG photo')
  expect(refusalOf(sample.project, aPhoto(Buffer.alloc(1_100_000)))).toBe('a photo is at most 1 MB')
  const full = Array.from({ length: 20 }, (_, at) => big(at)).reduce((so, jpeg) => {
    const found = pinned(so, jpeg)
    return found.ok ? found.value : so
  }, sample.project)
  expect(Object.keys(full.photos ?? {})).toHaveLength(20)
  expect(refusalOf(full, big(20))).toBe('all photos together are at most 20 MB')
  // one that is there already takes no more room
  expect(refusalOf(full, big(3))).toBe('taken')
})
