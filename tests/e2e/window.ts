import { type Browser, chromium, type Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll } from 'vitest'
import { ensureBuilt, windowFolder } from '../../app/start/build.mjs'
import { serve } from '../../app/start/serve.mjs'
import { samples } from '../../core/detail'
import { keptPages } from './kept-pages'

const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]

/** How a page is opened: size, theme, language, at the start or with which of the samples. */
export type Opened = {
  readonly width?: number
  readonly height?: number
  readonly theme?: 'light' | 'dark'
  readonly language?: 'en' | 'de'
  /** number of the sample that is opened, as in the menu */
  readonly sample?: number
  /** a page with what the browser kept for that one; else it keeps nothing for anybody */
  readonly beside?: Page
  /** nothing is opened: the page shows where work begins */
  readonly atStart?: true
  /** runs in the page before its own scripts */
  readonly before?: string
  readonly ready?: (page: Page) => Promise<void>
}

/** A page with all that went wrong in it: faults, refused loads, requests to anywhere else. */
export type Watched = {
  readonly page: Page
  readonly faults: readonly string[]
  readonly refusals: () => Promise<readonly string[]>
  readonly strangers: readonly string[]
}

/**
 * Starts the built window once for a file of tests, in a real browser, over loopback as it is served to users. What a test
 * opened is closed or emptied after it: a page that nobody looks at any more still paints and solves.
 */
export const withWindow = () => {
  let browser: Browser | undefined
  let stop = () => {}
  let address = ''
  let at = ''
  let pages: ReturnType<typeof keptPages> | undefined

  beforeAll(async () => {
    await ensureBuilt()
    const served = await serve({ folder: windowFolder, port: 0 })
    ;[address, at] = [served.address, served.at]
    browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: flags })
    pages = keptPages(browser, at)
    stop = () => served.server.close()
  }, 180_000)
  afterEach(async () => pages?.putBack())
  afterAll(async () => {
    await browser?.close()
    stop()
  })

  return async (of: Opened = {}): Promise<Watched> => {
    const { width = 1280, height = 720, theme = 'light', language = 'en', sample = 0 } = of
    if (browser === undefined || pages === undefined) throw new Error('the browser did not start')
    const size = { width, height }
    const liking = { theme, language, wheel: 'zoom', snap: true, sizes: true, numbers: false }
    const before = `
      localStorage.setItem('jambwright.liking', JSON.stringify(${JSON.stringify(liking)}))
      window.refusals = []
      document.addEventListener('securitypolicyviolation', it => window.refusals.push(it.violatedDirective + ' ' + it.blockedURI))
      ${of.before ?? ''}
    `
    const page = await opened(of, { browser, pages }, { size, before })
    // From now on the driver takes file choosers over: asked for only when one is about to open, it may come too late.
    page.on('filechooser', () => undefined)
    const faults: string[] = []
    const strangers: string[] = []
    page.on('pageerror', error => faults.push(error.message))
    page.on('console', message => {
      if (message.type() === 'error') faults.push(message.text())
    })
    page.on('request', request => {
      if (!request.url().startsWith(at) && !/^(data|blob):/.test(request.url())) strangers.push(request.url())
    })
    await of.ready?.(page)
    await page.goto(of.atStart ? address : `${address}#${samples[sample]?.file ?? ''}`)
    await page
      .locator(of.atStart ? '.walls button' : '[data-grip]')
      .first()
      .waitFor()
    await painted(page)
    return { page, faults, strangers, refusals: () => page.evaluate('window.refusals') }
  }
}

/** An empty page: one that is kept, or a new one where more is done to it than can be taken back. */
const opened = async (
  { beside, ready, language = 'en' }: Opened,
  { browser, pages }: { readonly browser: Browser; readonly pages: ReturnType<typeof keptPages> },
  how: { readonly size: { readonly width: number; readonly height: number }; readonly before: string },
): Promise<Page> => {
  if (!beside && !ready) return pages.take(language, how.size, how.before)
  const look = { viewport: how.size, locale: language, acceptDownloads: true }
  const page = await (beside?.context() ?? (await browser.newContext(look))).newPage()
  await page.addInitScript(how.before)
  return page
}

/** Opens a sample by its number in the menu of the file. */
export const openSample = async (page: Page, sample: number): Promise<void> => {
  const before = 5
  await page.click('.file')
  await page
    .getByRole('menuitem')
    .nth(before + sample)
    .click()
}

/** The text in a field of the right column, by its name. */
export const valueOf = (page: Page, name: string): Promise<string> =>
  page.locator('[data-area="fields"]').getByRole('textbox', { name, exact: true }).inputValue()

/** A written number as a number: decimal comma or point, true minus sign. */
export const numberIn = (text: string): number => Number(text.replace('−', '-').replace(',', '.'))

/** The middle of a grip on the screen. */
export const gripAt = async (page: Page, field: string): Promise<readonly [x: number, y: number]> => {
  const box = await page.locator(`[data-grip="${field}"] .pill`).first().boundingBox()
  if (box === null) throw new Error(`no grip ${field}`)
  return [box.x + box.width / 2, box.y + box.height / 2]
}

/** Waits until what was last done has been painted, also in the panels that follow the hand a moment later. */
export const painted = async (page: Page): Promise<void> => {
  await page.evaluate(`new Promise(done => {
    const isBehind = () => document.querySelector('main[aria-busy="true"]') !== null
    const look = () => requestAnimationFrame(() => requestAnimationFrame(() => (isBehind() ? look() : done())))
    look()
  })`)
}

export { soon } from '../given/soon'
