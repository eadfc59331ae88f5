/** Files that the user chooses by the browser's own file input; none where the user calls it off. */
export const chosenByInput = (
  page: Window,
  of: { readonly accept: string; readonly several?: true },
): Promise<readonly File[]> =>
  new Promise(answer => {
    const input = page.document.createElement('input')
    input.type = 'file'
    input.accept = of.accept
    input.multiple = of.several === true
    input.addEventListener('cancel', () => answer([]))
    input.addEventListener('change', () => answer([...(input.files ?? [])]))
    input.click()
  })

/** Pictures that can be pinned: what every browser can read. */
const photoTypes = ['image/jpeg', 'image/png']

/** Photos that the user chooses, in the browser and in the desktop window alike. */
export const chosenPhotos = (page: Window): Promise<readonly File[]> =>
  chosenByInput(page, { accept: photoTypes.join(','), several: true })

/** The photos among what was dropped, if nothing else was. Must be asked while the event is being handled. */
export const droppedPhotos = (what: DataTransfer): readonly File[] => {
  const files = [...what.files]
  return files.every(it => photoTypes.includes(it.type)) ? files : []
}
