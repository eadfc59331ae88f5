import type { Bridge } from '../bridge'
import type { Host } from './host'

/** The host of the desktop program: everything goes over the bridge. */
export const desktopHost = (bridge: Bridge): Host => ({
  kind: 'desktop',
  open: bridge.open,
  save: bridge.save,
  saveAs: bridge.saveAs,
  setUnsaved: bridge.setUnsaved,
  beforeClose: mayClose => {
    bridge.onCloseAsked(() => {
      void mayClose().then(bridge.answerClose)
    })
  },
  listen: bridge.onNews,
})
