import { describe, expect, it } from 'vitest'
import { samples } from '../../../core/detail'
import { checkReport, type Drawing, inkOf, textWidth_mm } from '../../../core/drawing'
import { check } from '../../../core/rules'
import { languages } from '../../../core/words'
import { photographed } from '../../given/photographed'

const cases = samples.flatMap(({ file, project }) =>
  languages.map(language => ({ name: `${file}, ${language}`, project, language })),
)

const wordsOn = (pages: readonly Drawing[]): readonly string[] =>
  pages.flatMap(page =>
    inkOf(page).flatMap(group => group.inks.flatMap(it => (it.kind === 'letters' ? [it.words] : []))),
  )

describe.each(cases)('the check report of $name', ({ project, language }) => {
  const report = check(project)
  const pages = checkReport(project, report, { language, palette: 'black' })
  const all = wordsOn(pages).join(' ')

  it('says every finding and every rule that does not apply by its title', () => {
    const titles = [...report.findings, ...report.notApplicable].map(it =>
      it.title[language].replaceAll('s_d', 'sd'),
    )
    // a title may be broken into lines, so its words are looked for one by one
    const missing = titles.filter(title => title.split(' ').some(word => !all.includes(word)))
    expect(missing).toEqual([])
  })

  it('says every term of every sum', () => {
    for (const term of report.findings.flatMap(it => it.sum))
      for (const word of term.says[language].replaceAll('s_d', 'sd').split(' ')) expect(all).toContain(word)
  })

  it('keeps all words inside its margins', () => {
    for (const page of pages)
      for (const it of inkOf(page).flatMap(group => group.inks)) {
        if (it.kind !== 'letters') continue
        const width = textWidth_mm(it.words, it.height_mm, it.bold)
        const start =
          it.anchor === 'end' ? it.at[0] - width : it.anchor === 'middle' ? it.at[0] - width / 2 : it.at[0]
        expect(start, it.words).toBeGreaterThanOrEqual(19.9)
        expect(start + width, it.words).toBeLessThanOrEqual(200.1)
        expect(it.at[1], it.words).toBeGreaterThanOrEqual(10)
      }
  })

  it('counts its pages', () => {
    pages.forEach((page, at) => expect(wordsOn([page])).toContain(`${at + 1} / ${pages.length}`))
  })
})

it('a report lists the photos of the site by number, place, day, note and the beginning of their digest', () => {
  const [sample] = samples
  if (sample === undefined) throw new Error('no sample')
  const words = (project: typeof sample.project) =>
    wordsOn(checkReport(project, check(project), { language: 'en', palette: 'black' }))
  const project = photographed(sample.project)
  const said = words(project)
  const [first] = Object.values(project.openings)[0]?.photos ?? []
  const digest = first?.photo.slice(0, 'sha256:'.length + 8) ?? ''
  expect(digest).toMatch(/^sha256:[0-9a-f]{8}$/)
  expect(said).toContain(`left jamb · 300\u00a0mm · 2026-03-14 · old putty · ${digest}`)
  expect(said.filter(it => /^Photo \d$/.test(it))).toEqual(['Photo 1', 'Photo 2', 'Photo 3'])
  expect(words(sample.project).some(it => it.startsWith('Photo'))).toBe(false)
})
