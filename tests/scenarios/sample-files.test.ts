import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { extension, openProject, samples, saveProject } from '../../core/detail'
import { check } from '../../core/rules'

const folder = new URL('../../assets/samples/', import.meta.url).pathname

// A changed builder is written to its file by this test under WRITE_SAMPLES=1; look at what changed before keeping it.
describe.each(samples)('sample $file', ({ file, project }) => {
  test('stands in its file as it is built', () => {
    const path = `${folder}${file}.${extension}`
    if (process.env.WRITE_SAMPLES === '1') writeFileSync(path, saveProject(project))
    expect(readFileSync(path, 'utf8')).toBe(saveProject(project))
  })

  test('opens again as it is', () => {
    const opened = openProject(saveProject(project))
    expect(opened.ok && opened.value.project).toEqual(project)
  })
})

test('there is no other file among them', () => {
  expect(readdirSync(folder).toSorted()).toEqual(samples.map(it => `${it.file}.${extension}`).toSorted())
})

test('at least twelve come with the program, four of them wrong on purpose', () => {
  expect(samples.length).toBeGreaterThanOrEqual(12)
  const wrong = samples.filter(it => it.project.title.note.startsWith('Wrong on purpose'))
  expect(wrong.length).toBeGreaterThanOrEqual(4)
  for (const { project } of wrong)
    expect(check(project).findings.some(it => it.verdict === 'not-met')).toBe(true)
})

test('samples of Germany, Austria and Britain come with the program', () => {
  expect([...new Set(samples.map(it => it.project.practice.id))].toSorted()).toEqual(['AT', 'DE', 'UK'])
})
