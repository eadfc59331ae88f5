import type { Page } from 'playwright-core'

/**
 * Elements whose words do not fit: text wider than its box where nothing scrolls and no ellipsis says so, and inputs
 * whose number is cut off (words that are typed may be as long as they like, and move in their box). Words that end in an ellipsis must have a title that holds them.
 */
export const clippedIn = (page: Page): Promise<readonly string[]> =>
  page.evaluate(`(() => {
    const found = []
    const scrolled = it => it && (/auto|scroll/.test(getComputedStyle(it).overflowY) || scrolled(it.parentElement))
    const says = it => it.tagName + '.' + it.className + ' "' + (it.value ?? it.textContent).trim().slice(0, 40) + '"'
    for (const it of document.querySelectorAll('body *')) {
      if (it.closest('svg, .unseen, .stage, .paper') || it.getClientRects().length === 0) continue
      const style = getComputedStyle(it)
      const isField = it instanceof HTMLInputElement && it.type === 'text'
      const hasText = isField || [...it.childNodes].some(node => node.nodeType === 3 && node.textContent.trim() !== '')
      const isTypedText = isField && !/^[−\\d]/.test(it.value)
      if (hasText && !isTypedText && it.scrollWidth > it.clientWidth + 1 && style.display !== 'inline') {
        const isEllipsis = style.textOverflow === 'ellipsis' && (it.title !== '' || it.closest('[title]') !== null)
        if (!isEllipsis && !/auto|scroll/.test(style.overflowX)) found.push('wide ' + says(it))
      }
      if (hasText && style.overflowY === 'hidden' && it.scrollHeight > it.clientHeight + 2) found.push('high ' + says(it))
      const box = it.getBoundingClientRect()
      const scrolls = scrolled(it)
      if (hasText && !scrolls && (box.right > innerWidth + 1 || box.bottom > innerHeight + 1)) found.push('outside ' + says(it))
    }
    if (document.documentElement.scrollWidth > innerWidth) found.push('the page scrolls sideways')
    return found
  })()`)

/**
 * Makes every word of the page two fifths longer, as a language with longer words would: what a translation may bring.
 * Numbers, signs, pictures and what is typed stay as they are, and so does what was made longer before.
 */
export const lengthenWords = (page: Page): Promise<void> =>
  page.evaluate(`(() => {
    const longer = text => text.replace(/\\p{L}{2,}/gu, it => it + 'o'.repeat(Math.round(it.length * 0.4)))
    const made = (window.lengthened ??= new WeakMap())
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    for (let node = walk.nextNode(); node; node = walk.nextNode())
      if (!node.parentElement.closest('svg, .unseen, .stage, .paper, .kbd') && made.get(node) !== node.textContent) {
        node.textContent = longer(node.textContent)
        made.set(node, node.textContent)
      }
  })()`)
