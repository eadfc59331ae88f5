/** Does one thing after another while nobody waits for anything, each in a turn of its own. The answer calls the rest off. */
export const whenIdle = (things: readonly (() => void)[]): (() => void) => {
  let isOver = false
  const turn = (at: number): void => {
    const thing = things[at]
    if (isOver || thing === undefined) return
    soon(() => {
      if (isOver) return
      thing()
      turn(at + 1)
    })
  }
  afterPaint(() => turn(0))
  return () => (isOver = true)
}

/** What is there already is painted first. */
const afterPaint = (what: () => void): void => {
  requestAnimationFrame(() => requestAnimationFrame(what))
}

/** Not every browser says when it is idle. */
const soon = (what: () => void): void => {
  if (typeof window.requestIdleCallback === 'function') window.requestIdleCallback(what, { timeout: 500 })
  else setTimeout(what, 30)
}
