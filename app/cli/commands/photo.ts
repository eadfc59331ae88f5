import { readFile } from 'node:fs/promises'
import { type Project } from '../../../core/detail'
import { sides } from '../../../core/kinds'
import { ok, refused } from '../../../core/units'
import { filled, words } from '../../../core/words'
import { changeProject, nothingSaid, openedProject, toOption } from '../change-project'
import { faultOf, reasons } from '../read-project'
import type { Command } from './command'
import { languageOption } from './language'

/** Pins a photo of the site to an opening, inside the file; without a photo, lists those that are pinned. */
export const photo: Command = {
  name: 'photo',
  says: 'pin a photo to an opening, inside the file: photo FILE IMAGE.jpg --side left --at 600 --note "old putty"; without a photo, list them',
  takes: [
    { name: 'file', says: 'the project file' },
    { name: 'photo', says: 'a JPEG of at most 1 MB', mayMiss: true },
  ],
  options: [
    { flags: '--opening <id>', says: 'the opening, instead of the first' },
    { flags: '--side <side>', says: 'the side that it shows', choices: sides },
    { flags: '--at <mm>', says: 'how far along that side, from its left or lower end' },
    { flags: '--date <day>', says: 'day that it was taken, as in 2026-03-14' },
    { flags: '--note <text>', says: 'what it shows' },
    toOption,
    languageOption,
  ],
  run: async ([file = '', image = ''], chosen, io) => {
    if (image === '') {
      const project = await openedProject(file, chosen, io)
      if (project === undefined) return 2
      io.out(photosText(project))
      return 0
    }
    const bytes = await readFile(image).catch(faultOf)
    return changeProject(file, { chosen, io, at: image }, project => {
      if ('code' in bytes)
        return refused({ at: '', say: reasons[bytes.code] ?? filled(unreadable, bytes.code) })
      const at = chosen['at'] === undefined ? undefined : Number(chosen['at'])
      const side = sides.find(it => it === chosen['side'])
      const text = (key: string) => (typeof chosen[key] === 'string' ? chosen[key] : undefined)
      const date = text('date')
      const [first = ''] = Object.keys(project.openings)
      return ok({
        edits: [
          {
            kind: 'pin-photo',
            opening: text('opening') ?? first,
            jpeg: bytes.toString('base64'),
            ...(side === undefined ? {} : { side }),
            ...(at === undefined ? {} : { at_mm: at }),
            ...(date === undefined ? {} : { date }),
            note: text('note') ?? '',
          },
        ],
        says: nothingSaid,
      })
    })
  },
}

const photosText = (project: Project): string =>
  Object.values(project.openings)
    .flatMap(opening =>
      (opening.photos ?? []).map(it =>
        [it.id, opening.id, it.side ?? '', it.at_mm ?? '', it.date ?? '', it.note].join('\t'),
      ),
    )
    .map(it => `${it}\n`)
    .join('')

const unreadable = words('it cannot be read ({0})', 'lässt sich nicht lesen ({0})')
