import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { exitFor } from '../../app/cli/commands/check'
import { samples, saveProject } from '../../core/detail'
import { practiceOf, practices } from '../../core/practice'
import { type Finding, type Report, check } from '../../core/rules'
import { source } from '../../core/sources'
import { writeCompared } from '../../core/units'
import { type Language, languages } from '../../core/words'
import { manyOpenings } from '../given/many-openings'
import { aFolder, typed } from './given'

const folder = aFolder()
const pathOf = (file: string): string => join(folder, `${file}.jamb`)
for (const { file, project } of samples) writeFileSync(pathOf(file), saveProject(project))

const asked = samples.flatMap(({ file, project }) =>
  practices.flatMap(({ id }) => {
    const report = check(project, practiceOf({ id, own: project.practice.own }))
    return languages.map(language => [file, id, language, report] as const)
  }),
)

describe.each(asked)('%s by %s in %s', (file, id, language, report) => {
  let typedOnce: ReturnType<typeof typed> | undefined
  const said = () => (typedOnce ??= typed('check', pathOf(file), '--practice', id, '--language', language))

  it('keeps to a hundred columns', async () => {
    const { out, err } = await said()
    expect(err).toBe('')
    expect(out.split('\n').filter(line => 100 < [...line].length)).toEqual([])
  })

  it('says all that each finding brings', async () => {
    const text = inOneLine((await said()).out)
    for (const it of report.findings)
      for (const part of partsOf(it, language)) expect(text).toContain(inOneLine(part))
    for (const it of report.notApplicable) expect(text).toContain(inOneLine(it.because[language]))
  })

  it('ends as its verdicts ask', async () => {
    expect((await said()).code).toBe(exitFor(report))
  })
})

/** What a reader must find of a finding. */
const partsOf = (it: Finding, language: Language): readonly string[] => {
  const compared = 'compared' in it && it.compared?.kind === 'amount' ? it.compared : undefined
  const amounts = compared ? Object.values(writeCompared(compared.actual, compared.required, language)) : []
  const remedies = 'remedies' in it ? it.remedies.map(remedy => remedy.say[language]) : []
  const sum = it.sum.map(term => term.says[language])
  return [
    it.title[language],
    ...amounts,
    ...(it.cite ? [source(it.cite.source).title[language]] : []),
    ...remedies,
    ...sum,
  ]
}

const inOneLine = (text: string): string => text.replaceAll(/\s+/g, ' ')

describe('the samples are what their names say', () => {
  const named = (begin: string) =>
    samples.filter(it => it.name.en.startsWith(begin)).map(it => [it.file] as const)

  it.each(named('Right'))('%s breaks no rule', async file => {
    expect((await typed('check', pathOf(file))).code).not.toBe(1)
  })

  it.each(named('Wrong'))('%s breaks one', async file => {
    expect((await typed('check', pathOf(file))).code).toBe(1)
  })
})

describe('how a check ends', () => {
  const findings = samples.flatMap(it => check(it.project).findings)
  const met = findings.find(it => it.verdict === 'met')
  const report = (...all: readonly Finding[]): Report => ({ findings: all, notApplicable: [] })
  if (met?.verdict !== 'met') throw new Error('some sample meets some rule')
  const { compared: _, ...head } = met
  const unknown: Finding = { ...head, verdict: 'unknown', missing: [{ field: 'joint.planned', part: 'j' }] }
  const refer: Finding = { ...head, verdict: 'refer', to: met.title, handOver: [] }
  const act = { kind: 'act', say: met.title, thenState: { field: 'joint.planned', part: 'j' } } as const
  const advice: Finding = { ...met, verdict: 'advice', remedies: [act] }
  const broken: Finding = { ...met, verdict: 'not-met', remedies: [act] }

  it.each([
    ['nothing applies', report(), 0],
    ['all is met', report(met), 0],
    ['advice breaks nothing', report(met, advice), 0],
    ['something is referred', report(met, refer), 3],
    ['something is unknown', report(unknown, advice), 3],
    ['something is not met, whatever else there is', report(unknown, refer, broken), 1],
  ])('%s', (_, it, code) => expect(exitFor(it)).toBe(code))
})

describe('--json', () => {
  it('is one object with the members that others read', async () => {
    const { out } = await typed('check', pathOf('tight-outside'), '--json')
    const json = JSON.parse(out)
    expect(Object.keys(json)).toEqual(['schema', 'file', 'practice', 'edition', 'findings', 'notApplicable'])
    expect(json).toMatchObject({ schema: 'jambwright-check/1', file: 'tight-outside.jamb', practice: 'DE' })
    const project = samples.find(it => it.file === 'tight-outside')?.project
    const report = project && check(project)
    expect(json.findings).toHaveLength(report?.findings.length ?? 0)
    expect(json.notApplicable).toEqual(report?.notApplicable)
  })

  it('brings the margin of what is compared as an amount, negative where it is not met', async () => {
    const { findings } = JSON.parse((await typed('check', pathOf('tight-outside'), '--json')).out)
    const broken = findings.filter((it: Finding) => it.verdict === 'not-met' && it.compared.kind === 'amount')
    expect(broken.length).toBeGreaterThan(0)
    for (const it of broken) expect(it.margin).toBeLessThan(0)
  })
})

it('a practice may be named in small letters', async () => {
  const { out } = await typed('check', pathOf('right-jamb'), '--practice', 'uk')
  expect(out).toContain('United Kingdom')
})

describe('many openings', () => {
  const path = pathOf('block')
  writeFileSync(path, saveProject(manyOpenings(9, 9)))

  it('are said once for each finding, worst first, with all places that it is at', async () => {
    const { out } = await typed('check', path)
    const heads = out.split('\n').filter(it => /^[×?→!] /.test(it))
    expect(new Set(heads).size).toBe(heads.length)
    const marks = heads.map(it => '×?→!'.indexOf(it.charAt(0)))
    expect(marks).toEqual(marks.toSorted((a, b) => a - b))
    expect(out).toMatch(/worst at +W-\d/)
    expect(out).toMatch(/3 of 9 openings: W-\d/)
  })

  it('are said one by one where that is wanted', async () => {
    const { out } = await typed('check', path, '--each')
    for (let at = 1; at <= 9; at++) expect(out).toContain(`\nW-${at}, `)
    expect(out).not.toContain('worst at')
  })
})
