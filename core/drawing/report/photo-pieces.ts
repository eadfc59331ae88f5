import { openingOf, type PinnedPhoto, type Project, sideNameAt } from '../../detail'
import type { Side } from '../../kinds'
import { writeQuantity } from '../../units'
import { filled, type Language, words } from '../../words'
import type { Piece } from './pages'
import { headingPiece, rowPiece } from './pieces'

/**
 * The photos of the site that are pinned, by opening and with their numbers: where and when each was taken, what it shows,
 * and how its digest begins, by which the picture in the file is known again.
 */
export const photoPieces = (project: Project, language: Language): readonly Piece[] => {
  const openings = Object.keys(project.openings).filter(
    it => (openingOf(project, it).photos ?? []).length > 0,
  )
  if (openings.length === 0) return []
  return [
    headingPiece(words('Photos of the site', 'Fotos vom Bau')[language], 1),
    ...openings.flatMap(id => {
      const { name, photos = [] } = openingOf(project, id)
      return [
        rowPiece({ label: name, text: '', bold: true, keeps: 1, above_mm: 1.2 }),
        ...photos.map((it, at) =>
          rowPiece({
            label: filled(words('Photo {0}', 'Foto {0}'), at + 1)[language],
            labelWidth_mm: 18,
            text: saidOf(it, side => sideNameAt(project, id, side)[language], language),
          }),
        ),
      ]
    }),
  ]
}

const saidOf = (
  { side, at_mm, date, note, photo }: PinnedPhoto,
  nameOf: (side: Side) => string,
  language: Language,
): string =>
  [
    side ? nameOf(side) : words('whole opening', 'ganze Öffnung')[language],
    at_mm === undefined ? '' : writeQuantity(at_mm, 'mm', language),
    date ?? '',
    note,
    photo.slice(0, shownDigest),
  ]
    .filter(it => it !== '')
    .join(' · ')

/** `sha256:` and eight digits of it tell the photos of one project apart. Ours. */
const shownDigest = 15
