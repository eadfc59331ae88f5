import type { Browser, Page } from 'playwright-core'

/**
 * Pages of a browser that are used by one test after another. A page that has run the program before runs it again for a
 * third of the work: its process is there, and what it compiled. Between two tests it holds nothing of what was done in
 * it: no document, nothing stored, no listener, no medium.
 */
export const keptPages = (browser: Browser, at: string) => {
  const free = new Map<string, Page[]>()
  const taken = new Map<Page, { readonly locale: string; readonly dispose: () => Promise<void> }>()

  /** An empty page of a language and size, which runs a script before those of its documents. */
  const take = async (
    locale: string,
    viewport: { readonly width: number; readonly height: number },
    before: string,
  ): Promise<Page> => {
    const page =
      free.get(locale)?.pop() ??
      (await (await browser.newContext({ viewport, locale, acceptDownloads: true })).newPage())
    await page.setViewportSize(viewport)
    const script = await page.addInitScript(before)
    taken.set(page, { locale, dispose: () => script.dispose() })
    return page
  }

  /** Takes back what tests have opened: pages of these are emptied and kept, all others close with their contexts. */
  const putBack = async (): Promise<void> => {
    const kept = new Set([...free.values()].flat())
    for (const context of browser.contexts()) {
      const [page, ...more] = context.pages()
      const of = page && taken.get(page)
      if (page && of && more.length === 0 && (await isEmptied(page, at, of.dispose)))
        free.set(of.locale, [...(free.get(of.locale) ?? []), page])
      else if (!page || !kept.has(page)) await context.close()
    }
    taken.clear()
  }

  return { take, putBack }
}

/** Empties a page; one that does not let itself be emptied is not used again. */
const isEmptied = async (page: Page, at: string, dispose: () => Promise<void>): Promise<boolean> => {
  try {
    for (const kind of ['pageerror', 'console', 'request', 'download'] as const) page.removeAllListeners(kind)
    await dispose()
    // A page of the same origin: leaving it, the browser would end the process and forget what it compiled.
    await page.goto(`${at}/nothing`)
    await page.emulateMedia({ media: null, colorScheme: null, forcedColors: null, reducedMotion: null })
    await page.mouse.up()
    await page.mouse.move(0, 0)
    const session = await page.context().newCDPSession(page)
    await session.send('Storage.clearDataForOrigin', { origin: at, storageTypes: 'all' })
    await session.detach()
    return true
  } catch {
    return false
  }
}
