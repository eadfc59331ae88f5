import { contextBridge, ipcRenderer, webUtils } from 'electron'
import { type Bridge, bridgeName, channels } from '../bridge'

/** The bridge between the page and the desktop program. The message object never reaches the page. */
const bridge: Bridge = {
  open: () => ipcRenderer.invoke(channels.open),
  openRecent: token => ipcRenderer.invoke(channels.openRecent, token),
  // What the page hands over is its own File; anything else has no path and is refused.
  dropped: file => ipcRenderer.invoke(channels.dropped, webUtils.getPathForFile(file as File)),
  save: (token, name, bytes) => ipcRenderer.invoke(channels.save, token, name, bytes),
  saveAs: (name, kind, bytes) => ipcRenderer.invoke(channels.saveAs, name, kind, bytes),
  peek: token => ipcRenderer.invoke(channels.peek, token),
  recents: () => ipcRenderer.invoke(channels.recents),
  remember: (token, about) => ipcRenderer.invoke(channels.remember, token, about),
  forget: token => ipcRenderer.invoke(channels.forget, token),
  forgetAll: () => ipcRenderer.invoke(channels.forgetAll),
  keepCopy: copy => ipcRenderer.invoke(channels.keepCopy, copy),
  copies: () => ipcRenderer.invoke(channels.copies),
  letGo: document => ipcRenderer.invoke(channels.letGo, document),
  print: paper => ipcRenderer.invoke(channels.print, paper),
  about: () => ipcRenderer.invoke(channels.about),
  restart: how => {
    ipcRenderer.send(channels.restart, how)
  },
  setLanguage: language => {
    ipcRenderer.send(channels.language, language)
  },
  setUnsaved: unsaved => {
    ipcRenderer.send(channels.unsaved, unsaved)
  },
  onCloseAsked: asked => {
    ipcRenderer.on(channels.closeAsked, () => asked())
  },
  answerClose: mayClose => {
    ipcRenderer.send(channels.closeAnswered, mayClose)
  },
  onNews: hear => {
    ipcRenderer.on(channels.news, (_message, news) => hear(news))
    ipcRenderer.send(channels.ready)
  },
}

contextBridge.exposeInMainWorld(bridgeName, bridge)
