import type { Project } from '../../../core/detail'
import type { Drawing } from '../../../core/drawing'
import type { Format } from '../../../core/export'
import type { Side } from '../../../core/kinds'
import { fontsNamed } from './fonts'

/** A sheet in a format, with the project inside where the format carries it. */
export const writeSheet = async (
  format: Format,
  drawing: Drawing,
  { title }: Project,
  model: string,
): Promise<Uint8Array> =>
  format.write(
    {
      drawings: [drawing],
      information: {
        title: drawing.title,
        author: title.office,
        subject: [title.name, title.number].filter(Boolean).join(' '),
        keywords: [],
        dated: '',
      },
      model,
    },
    await fontsNamed(format.fonts),
  )

/** The name that a sheet is offered under: letters and digits of its number, and the side. */
export const exportName = (number: string, side: Side, { extension }: Format): string =>
  `${number.replace(/[^\p{L}\p{N}-]+/gu, '-').replace(/^-+|-+$/g, '') || 'detail'}-${side}.${extension}`
