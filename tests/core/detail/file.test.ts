import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { digestOf, openProject, samples, saveProject } from '../../../core/detail'

const [sample] = samples
const text = sample ? saveProject(sample.project) : ''
const problemsOf = (changed: string) => {
  const found = openProject(changed)
  return found.ok ? [] : found.problems.map(it => `${it.at}: ${it.say.en}`)
}

describe('a project file', () => {
  test('opens as the project that was saved, for every sample', () => {
    for (const { project } of samples) {
      const opened = openProject(saveProject(project))
      expect(opened).toEqual({ ok: true, value: { project, readOnly: false, notes: [] } })
    }
  })

  test('saves to the same text again', () => {
    const opened = openProject(text)
    expect(opened.ok && saveProject(opened.value.project)).toBe(text)
  })

  test('says so when it was changed by hand, and opens all the same', () => {
    const opened = openProject(text.replace('"value": 140', '"value": 141'))
    expect(opened.ok && opened.value.notes.map(it => it.en)).toEqual([
      'This file was changed outside this program.',
    ])
  })

  test('keeps its digest when only white space changes', () => {
    const opened = openProject(JSON.stringify(JSON.parse(text)))
    expect(opened.ok && opened.value.notes).toEqual([])
  })

  test('has a digest that a changed value changes', () => {
    const project = sample?.project
    if (!project) throw new Error('no sample')
    expect(digestOf({ ...project, title: { ...project.title, name: 'Mill House' } })).not.toBe(
      digestOf(project),
    )
  })

  test.each([
    ['nothing at all', '', 'end of file: the file is damaged: this is no valid JSON'],
    ['a torn file', text.slice(0, 900), 'line 46: the file is damaged: this is no valid JSON'],
    ['a list', '[1, 2]', 'file: this is no Jambwright file'],
    [
      'another format',
      '{"format": {"name": "other", "version": 1, "readableFrom": 1}}',
      'file: this is no Jambwright file',
    ],
    ['nesting without end', '['.repeat(5000), 'character 41: brackets are nested deeper than 40'],
    [
      'a negative thickness',
      text.replace('"value": 140', '"value": -140'),
      'walls.wall-1.layers.1.thickness_mm.value: more than 0 is needed',
    ],
    [
      'a word for a number',
      text.replace('"value": 140', '"value": "140"'),
      'walls.wall-1.layers.1.thickness_mm.value: number is needed here',
    ],
    [
      'an unknown member',
      text.replace('"cover_mm"', '"colour": 1, "cover_mm"'),
      'walls.wall-1.reveal: unknown here: colour',
    ],
    [
      'an unknown kind of seal',
      text.replace('"kind": "foam"', '"kind": "straw"'),
      'joints.joint-7.seals.1.kind: not known here: straw',
    ],
    [
      'a wall that is not there',
      text.replace('"wall": "wall-1"', '"wall": "wall-9"'),
      'openings.opening-15.wall: wall wall-9 does not exist',
    ],
    [
      'a practice that is not there',
      text.replace('"id": "DE"', '"id": "XX"'),
      'practice.id: practice XX does not exist',
    ],
    [
      'a frame outside the wall',
      text.replace(/("position_mm": \{\s+"value": )15/, '$1900'),
      'opening-15 opening.position: the frame would stand outside the wall: the frame stands between the outer skin and the inner face of the wall, beside its nib',
    ],
  ])('refuses %s with its place', (_, changed, says) => {
    expect(problemsOf(changed)).toContain(says)
  })

  test('says all problems at once, not only the first', () => {
    const changed = text.replace('"value": 140', '"value": -140').replace('"kind": "foam"', '"kind": "straw"')
    expect(problemsOf(changed)).toHaveLength(2)
  })

  test.each(['right-jamb', 'foam-only', 'tight-outside'])(
    'of the first version opens as what it was: %s',
    file => {
      const old = readFileSync(new URL(`../../given/files/${file}-1.jamb`, import.meta.url), 'utf8')
      const opened = openProject(old)
      const now = samples.find(it => it.file === file)?.project
      // what the sample has gained since is not in the old file
      const {
        sill: _,
        asked: __,
        told: ___,
        fixings = [],
        ...then
      } = Object.values(now?.openings ?? {})[0] ?? {}
      const held = fixings.map(
        ({
          corner_mm: _,
          counts: __,
          core_mm: _core,
          steel_N_mm2: _steel,
          resistance_N: _resistance,
          ...it
        }) => it,
      )
      expect(opened.ok && Object.values(opened.value.project.openings)).toEqual([
        { ...then, fixings: held, blocks: [] },
      ])
      expect(opened.ok && opened.value.notes.map(it => it.en)).toEqual([
        'An older program wrote this file: saving brings it up to date.',
      ])
    },
  )

  test('opens for reading only when a newer program wrote it and says this one may read it', () => {
    const newer = text
      .replace('"version": 2', '"version": 3')
      .replace('"cover_mm"', '"colour": 1, "cover_mm"')
    const opened = openProject(newer)
    expect(opened.ok && opened.value.readOnly).toBe(true)
  })

  test('is refused by name when a newer program wrote it and says this one may not', () => {
    const newer = text
      .replace('"version": 2', '"version": 4')
      .replace('"readableFrom": 2', '"readableFrom": 3')
    expect(problemsOf(newer)).toEqual([
      'format.version: a newer program wrote this file (version 4); this one reads up to version 2',
    ])
  })

  test('gives hostile names back unchanged', () => {
    const project = sample?.project
    if (!project) throw new Error('no sample')
    const name = 'a\nb\u0000\u202E<b>&"\'=1+1\r\n0\r\nSECTION'
    const opened = openProject(saveProject({ ...project, title: { ...project.title, name } }))
    expect(opened.ok && opened.value.project.title.name).toBe(name)
  })
})
