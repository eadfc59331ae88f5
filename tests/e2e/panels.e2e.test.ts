import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { samples, saveProject } from '../../core/detail'
import { photographed } from '../given/photographed'
import { clippedIn, lengthenWords } from './clipped'
import { noPickers, reopened, rowOf, unfold } from './journey'
import { seriousIn, smallIn } from './serious'
import { painted, type Watched, withWindow } from './window'

const open = withWindow()

/** Every panel of the window, by what leads to it; each is left as it was found. */
type Panel = {
  readonly name: string
  /** where it stands in the page */
  readonly at: string
  readonly show: (page: Page) => Promise<void>
}

const groups: readonly Panel[] = [
  'zones',
  'sizes',
  'survey',
  'photos',
  'round',
  'asked',
  'threshold',
  'air',
].map(id => ({
  name: `fields, ${id}`,
  at: '[data-area="fields"]',
  show: async page => {
    await unfold(page, id)
    await page.locator(`#group-${id}`).evaluate(it => it.scrollIntoView({ block: 'nearest' }))
  },
}))

const panels: readonly Panel[] = [
  ...groups,
  {
    name: 'heat',
    at: '[data-area="heat"]',
    show: async page => {
      await page.keyboard.press('Alt+Digit3')
      await page.getByTestId('coldest-card').waitFor({ timeout: 30_000 })
    },
  },
  {
    name: 'places of the frame',
    at: '.mid',
    show: async page => {
      await page.locator('[data-area="heat"] .more button').first().click()
    },
  },
  {
    name: 'vapour',
    at: '.mid',
    show: async page => {
      await page.keyboard.press('Escape')
      await page.locator('[data-area="heat"] .more button').nth(1).click()
    },
  },
  {
    name: 'practice',
    at: '[role="dialog"]',
    show: async page => {
      await page.keyboard.press('Alt+Digit3')
      await page.locator('.prac').click()
      await page.getByRole('menuitem').last().click()
      await page.getByRole('dialog').locator('.rows .btn').first().click()
    },
  },
  {
    name: 'sheet',
    at: 'main',
    show: async page => {
      await page.keyboard.press('Escape')
      await page.keyboard.press('Control+2')
      await page.locator('.act .btn').first().waitFor()
    },
  },
  { name: 'work', at: 'main', show: async page => void (await page.keyboard.press('Control+3')) },
  {
    name: 'start',
    at: 'main',
    show: async page => {
      await page.keyboard.press('Control+n')
      await page.locator('.walls button').first().waitFor()
    },
  },
]

/** Goes through all panels and looks at each. */
const through = async ({ page }: Watched, look: (panel: Panel) => Promise<void>): Promise<void> => {
  await rowOf(page, /Frame \d|Rahmen \d/).click()
  for (const panel of panels) {
    await panel.show(page)
    await painted(page)
    await look(panel)
  }
}

/** The groups that a frame has, those with lists of their own first. */
const longGroups = ['photos', 'round', 'survey', 'sizes', 'zones', 'threshold', 'asked', 'work', 'element']

describe('the groups of fields at 200 % text', () => {
  // A frame with photos, blocks and fixings, and a shutter box with all of its values.
  const withPhotos = (() => {
    const path = join(mkdtempSync(join(tmpdir(), 'panels-')), 'photos.jamb')
    const project = samples.find(it => it.file === 'box-on-top')?.project
    if (project) writeFileSync(path, saveProject(photographed(project)))
    return path
  })()
  it.each(['en', 'de'] as const)(
    'hold their words in %s, and words two fifths longer',
    { timeout: 120_000 },
    async language => {
      const { page } = await open({ language, before: noPickers })
      await reopened(page, withPhotos)
      const found: string[] = []
      const look = async (what: string) => {
        await painted(page)
        found.push(...(await clippedIn(page)).map(it => `${what}: ${it}`))
      }
      // What is chosen in a usual window is looked at in one of half its size.
      const chosen = async (name: RegExp) => {
        await page.setViewportSize({ width: 1280, height: 720 })
        await rowOf(page, name).click()
        await page.setViewportSize({ width: 640, height: 360 })
        await page.locator('#tab-fields').click()
      }
      await page.locator('#stretch-outer-head').click()
      await chosen(/Shutter box|Rollladenkasten/)
      await look('box')
      await lengthenWords(page)
      await look('box, longer words')
      await chosen(/Frame \d|Rahmen \d/)
      for (const id of longGroups) {
        await unfold(page, id)
        await look(id)
      }
      expect(await page.locator('.photo').count()).toBe(3)
      await lengthenWords(page)
      await look('longer words')
      expect([...new Set(found)]).toEqual([])
    },
  )
})

describe('every panel', () => {
  it.each([
    ['light', {}],
    ['dark', { theme: 'dark' }],
    ['forced colours', { forced: true }],
  ] as const)(
    'has nothing serious by machine in %s, and nothing too small to press',
    { timeout: 120_000 },
    async (_, of) => {
      const opened = await open('theme' in of ? of : {})
      if ('forced' in of) await opened.page.emulateMedia({ forcedColors: 'active' })
      const found: string[] = []
      await through(opened, async ({ name, at }) => {
        const all = [...(await seriousIn(opened.page, at)), ...(await smallIn(opened.page))]
        found.push(...all.map(it => `${name}: ${it}`))
      })
      expect([...new Set(found)]).toEqual([])
      expect(opened.faults).toEqual([])
    },
  )

  it('holds words two fifths longer', { timeout: 120_000 }, async () => {
    const opened = await open()
    const found: string[] = []
    await through(opened, async ({ name }) => {
      await lengthenWords(opened.page)
      await painted(opened.page)
      found.push(...(await clippedIn(opened.page)).map(it => `${name}: ${it}`))
    })
    expect([...new Set(found)]).toEqual([])
  })
})
