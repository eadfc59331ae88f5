import type { Bridge } from '../bridge'
import { droppedOne } from './dropped'
import { chosenPhotos } from './file-input'
import type { Host } from './host'

/** The host of the desktop program: everything goes over the bridge. One program has one window: nobody else holds work. */
export const desktopHost = (bridge: Bridge, page: Window): Host => ({
  ...bridge,
  kind: 'desktop',
  dropped: what => {
    const one = droppedOne(what)
    return one.kind === 'file' ? bridge.dropped(one.file) : Promise.resolve(one)
  },
  photos: () => chosenPhotos(page),
  hold: () => () => undefined,
  beforeClose: mayClose => {
    bridge.onCloseAsked(() => {
      void mayClose().then(bridge.answerClose)
    })
  },
  listen: bridge.onNews,
})
