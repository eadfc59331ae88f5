import type { HostFile } from '../bridge'

/** The project files in `assets/samples`, each loaded when it is asked for. */
const files = import.meta.glob<string>('../../assets/samples/*.json', { query: '?raw', import: 'default' })

/** The samples that come with the program, by file name. They have no place of their own: saving asks where. */
export const bundledSamples = (): Promise<readonly HostFile[]> =>
  Promise.all(
    Object.entries(files)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(async ([path, load]) => ({
        name: path.slice(path.lastIndexOf('/') + 1),
        bytes: new TextEncoder().encode(await load()),
        token: '',
      })),
  )
