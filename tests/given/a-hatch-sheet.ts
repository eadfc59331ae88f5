import { type Drawing, hatches, type Mark, type Palette } from '../../core/drawing'
import type { Point } from '../../core/geometry'
import type { Language } from '../../core/words'

/** A sheet with a field of every hatch, 3 in a row. */
export const aHatchSheet = (language: Language, palette: Palette): Drawing => ({
  size_mm: [210, 297],
  language,
  palette,
  title: 'Hatches',
  says: 'A field of every hatch with its name',
  materials: new Map(),
  marks: hatches.flatMap((hatch, at): Mark[] => {
    const x = 20 + (at % 3) * 60
    const y = 250 - Math.floor(at / 3) * 27
    const outline: Point[] = [
      [x, y],
      [x + 26, y],
      [x + 26, y + 21],
      [x, y + 21],
    ]
    return [
      {
        kind: 'area',
        layer: 'fabric',
        part: hatch.key,
        outline,
        holes: [],
        hatch: { key: hatch.key, origin: [x, y], turn_deg: 0, size: [26, 21] },
        tint: hatch.tint,
      },
      { kind: 'path', layer: 'fabric', part: hatch.key, pen: 'cut', points: outline, closed: true },
      {
        kind: 'text',
        layer: 'words',
        pen: 'text',
        at: [x + 28, y + 17],
        words: hatch.name[language],
        height_mm: 2.5,
        turn_deg: 0,
        anchor: 'start',
      },
    ]
  }),
})
