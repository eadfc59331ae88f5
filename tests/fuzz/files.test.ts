import { expect, test } from 'vitest'
import { openProject, samples, saveProject } from '../../core/detail'
import { type Random, randomFrom } from '../given/random'

const texts = samples.map(it => saveProject(it.project))

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
  (text, random) => `${random.one(['%PDF-1.7', 'PK\u0003\u0004', '<svg/>', '\uFEFF'])}${text}`,
]

test('5,000 damaged files: each opens or says what is wrong, nothing is thrown', () => {
  const random = randomFrom(7)
  let refused = 0
  for (let i = 0; i < 5000; i++) {
    const damage = damages[i % damages.length]
    const text = damage?.(texts[i % texts.length] ?? '', random) ?? ''
    const found = openProject(text)
    if (found.ok) continue
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
