import { contextBridge, ipcRenderer } from 'electron'
import { type Bridge, bridgeName, channels } from '../bridge'

/** The bridge between the page and the desktop program. The message object never reaches the page. */
const bridge: Bridge = {
  open: () => ipcRenderer.invoke(channels.open),
  save: (token, name, bytes) => ipcRenderer.invoke(channels.save, token, name, bytes),
  saveAs: (name, kind, bytes) => ipcRenderer.invoke(channels.saveAs, name, kind, bytes),
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
