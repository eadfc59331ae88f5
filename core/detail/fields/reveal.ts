import { words } from '../../words'
import { allowedCover, allowedLining } from '../allowed/reveal'
import { numberField } from './number-field'
import { withWall } from './tables'
import { entryAt } from '../find'

export const revealCover = numberField({
  id: 'reveal.cover',
  name: words('Cover of the frame', 'Überdeckung des Rahmens'),
  of: 'wall',
  unit: 'mm',
  read: (project, wall) => entryAt(project.walls, wall)?.reveal.cover_mm,
  allowed: allowedCover,
  write: (project, wall, to) =>
    withWall(project, wall, it => ({ ...it, reveal: { ...it.reveal, cover_mm: to ?? it.reveal.cover_mm } })),
})

export const revealLining = numberField({
  id: 'reveal.lining',
  name: words('Lining of the reveal', 'Bekleidung der Leibung'),
  of: 'wall',
  unit: 'mm',
  read: (project, wall) => entryAt(project.walls, wall)?.reveal.lining_mm,
  allowed: allowedLining,
  write: (project, wall, to) =>
    withWall(project, wall, it => ({
      ...it,
      reveal: { ...it.reveal, lining_mm: to ?? it.reveal.lining_mm },
    })),
})
