const steps: Readonly<Record<string, 'back' | 'on' | 'first' | 'last'>> = {
  ArrowUp: 'back',
  ArrowLeft: 'back',
  ArrowDown: 'on',
  ArrowRight: 'on',
  Home: 'first',
  End: 'last',
}

/**
 * Makes the buttons in an element one stop of Tab: arrows go from one to the next, Home and End to the ends.
 * Where the buttons stand in columns, up and down keep to the column.
 */
export const roving = (node: HTMLElement) => {
  const buttons = (): readonly HTMLElement[] => [
    ...node.querySelectorAll<HTMLElement>('button:not(:disabled)'),
  ]
  const stop = (at: HTMLElement | undefined): void => {
    for (const it of buttons()) it.tabIndex = it === at ? 0 : -1
  }
  const settle = (): void => {
    const all = buttons()
    stop(all.find(it => it.tabIndex === 0) ?? all[0])
  }
  const press = (event: KeyboardEvent): void => {
    const all = buttons()
    const at = all.findIndex(it => it === document.activeElement)
    const step = steps[event.key]
    if (at < 0 || step === undefined) return
    event.preventDefault()
    const isUpDown = event.key === 'ArrowUp' || event.key === 'ArrowDown'
    const next =
      step === 'first'
        ? all[0]
        : step === 'last'
          ? all.at(-1)
          : isUpDown
            ? inColumn(all, at, step)
            : all[at + (step === 'on' ? 1 : -1)]
    next?.focus()
  }
  const focus = (event: FocusEvent): void => {
    const at = buttons().find(it => it === event.target)
    if (at) stop(at)
  }
  node.addEventListener('keydown', press)
  node.addEventListener('focusin', focus)
  const watch = new MutationObserver(settle)
  watch.observe(node, { childList: true, subtree: true })
  settle()
  return () => {
    watch.disconnect()
    node.removeEventListener('keydown', press)
    node.removeEventListener('focusin', focus)
  }
}

/** The next button that stands over or under one, by its left edge; in one column that is the next of all. */
const inColumn = (all: readonly HTMLElement[], at: number, step: 'back' | 'on'): HTMLElement | undefined => {
  const from = all[at]?.getBoundingClientRect()
  const rest = step === 'on' ? all.slice(at + 1) : all.slice(0, at).toReversed()
  return rest.find(it => {
    const box = it.getBoundingClientRect()
    return from !== undefined && Math.abs(box.left - from.left) < 8 && Math.abs(box.top - from.top) > 8
  })
}
