/** Does work in the frame after the next one, once for all that asked for it until then. What it rests on is named to be watched. */
export const inFrameAfter = (work: () => void): ((...restsOn: readonly unknown[]) => void) => {
  let isDue = false
  return () => {
    if (isDue) return
    isDue = true
    requestAnimationFrame(() =>
      requestAnimationFrame(() => {
        isDue = false
        work()
      }),
    )
  }
}
