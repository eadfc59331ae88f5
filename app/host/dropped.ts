import { words } from '../../core/words'
import type { Read } from '../bridge'

type One =
  | { readonly kind: 'file'; readonly item: DataTransferItem; readonly file: File }
  | Extract<Read, { kind: 'failed' }>

/**
 * The one file among what was dropped on the window, or in words why there is none. Opening takes one file: of several
 * none is taken, because nobody could say which was meant. Must be asked while the event is being handled.
 */
export const droppedOne = (what: DataTransfer): One => {
  const items = [...what.items].filter(it => it.kind === 'file')
  const [item] = items
  if (item === undefined) return { kind: 'failed', why: noFile }
  if (items.length > 1) return { kind: 'failed', why: several }
  if (item.webkitGetAsEntry()?.isDirectory === true) return { kind: 'failed', why: folder }
  const file = item.getAsFile()
  return file === null ? { kind: 'failed', why: noFile } : { kind: 'file', item, file }
}

const noFile = words('What was dropped is no file. Drop a project file or a sheet that carries one.', 'Was abgelegt wurde, ist keine Datei. Ablegen lässt sich eine Projektdatei oder ein Blatt, das eine trägt.') // prettier-ignore
const several = words('Several files were dropped. Drop one at a time.', 'Mehrere Dateien wurden abgelegt. Bitte nur eine auf einmal.') // prettier-ignore
const folder = words('A folder was dropped. Drop the file in it.', 'Ein Ordner wurde abgelegt. Bitte die Datei darin ablegen.') // prettier-ignore
