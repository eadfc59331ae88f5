import { newStage, type Stage } from './stage'

/** A stage in its place that follows the screen: other pixel ratios, and a canvas that was lost and is given back. */
export const stageIn = (node: HTMLDivElement, beyond_px?: number): Stage => {
  const stage = newStage(node, beyond_px)
  let query: MediaQueryList | undefined
  const follow = (): void => {
    stage.followScreen()
    query?.removeEventListener('change', follow)
    query = window.matchMedia(`(resolution: ${window.devicePixelRatio}dppx)`)
    query.addEventListener('change', follow)
  }
  follow()
  // A change of the screen that the query misses still changes the size of the window.
  window.addEventListener('resize', follow)
  const canvas = node.querySelector('canvas')
  canvas?.addEventListener('contextrestored', stage.paintNow)
  // Letters are painted again once their font is there.
  void document.fonts.ready.then(stage.paintNow)
  return {
    ...stage,
    end: () => {
      query?.removeEventListener('change', follow)
      window.removeEventListener('resize', follow)
      canvas?.removeEventListener('contextrestored', stage.paintNow)
      stage.end()
    },
  }
}
