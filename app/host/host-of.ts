import { type Bridge, bridgeName } from '../bridge'
import { browserHost } from './browser'
import { desktopHost } from './desktop'
import type { Host } from './host'

/** The host of a page: the desktop program where its bridge is there, else the browser itself. */
export const hostOf = (page: Window): Host => {
  const bridge = bridgeOf(page)
  return bridge === undefined ? browserHost(page) : desktopHost(bridge, page)
}

const bridgeOf = (page: Window): Bridge | undefined =>
  // Only our own preload puts something under this name.
  (page as unknown as Readonly<Record<string, Bridge | undefined>>)[bridgeName]
