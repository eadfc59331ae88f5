import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Page } from 'playwright-core'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

type Found = {
  readonly id: string
  readonly impact: string
  readonly nodes: readonly { readonly html: string }[]
}

/** What axe finds serious or worse in a page, or in a part of it, with the elements. */
export const seriousIn = async (page: Page, part = 'html'): Promise<readonly string[]> => {
  if (!(await page.evaluate<boolean>('window.axe !== undefined'))) await page.evaluate(axe)
  const found = await page.evaluate<readonly Found[]>(
    `axe.run(document.querySelector(${JSON.stringify(part)}), { resultTypes: ['violations'] }).then(it => it.violations)`,
  )
  return found
    .filter(it => it.impact === 'serious' || it.impact === 'critical')
    .flatMap(it => it.nodes.map(node => `${it.id}: ${node.html.slice(0, 160)}`))
}

/**
 * What can be pressed and is smaller than 24 px one way or the other (WCAG 2.2, 2.5.8). A line is as large as its box;
 * links in a sentence are left out, as the criterion does, and so are pictures and what is not seen.
 */
export const smallIn = (page: Page): Promise<readonly string[]> =>
  page.evaluate(`(() => {
    const asked = 'button, input, select, a[href], [role="option"], [role="tab"], [role="radio"], [role="switch"], [role="menuitem"]'
    return [...document.querySelectorAll(asked)].flatMap(it => {
      if (it.closest('svg, .unseen, .paper') || it.matches('p .link, [aria-hidden="true"]')) return []
      const box = (it.closest('.inp, label') ?? it).getBoundingClientRect()
      if (box.width === 0 || box.height === 0) return []
      const says = (it.ariaLabel ?? it.textContent).trim().slice(0, 40)
      return box.width < 23.5 || box.height < 23.5
        ? [it.tagName + '.' + it.className + ' "' + says + '" ' + box.width.toFixed(0) + ' × ' + box.height.toFixed(0)]
        : []
    })
  })()`)
