import type { App, Session } from 'electron'
import { isOurPage } from './scheme'

/** What no page may ever do: leave for another address, open windows, embed pages, or be granted a permission. */
export const guardPages = (app: App): void => {
  app.on('web-contents-created', (_event, contents) => {
    contents.on('will-navigate', event => {
      if (!isOurPage(event.url)) event.preventDefault()
    })
    contents.on('will-frame-navigate', event => {
      if (!isOurPage(event.url)) event.preventDefault()
    })
    contents.on('will-attach-webview', event => event.preventDefault())
    contents.setWindowOpenHandler(() => ({ action: 'deny' }))
  })
}

/** Nothing is granted: not camera, place, notifications, nor anything that comes later. */
export const denyPermissions = (session: Session): void => {
  session.setPermissionRequestHandler((_contents, _permission, answer) => answer(false))
  session.setPermissionCheckHandler(() => false)
  session.setDevicePermissionHandler(() => false)
}
