import type { Id } from '../../geometry'
import type { RevealForm } from '../../kinds'
import { words } from '../../words'
import { allowedNibDepth, allowedNibLap } from '../allowed/nib'
import { allowedBoard, allowedCover, allowedLining } from '../allowed/reveal'
import type { Field } from '../field'
import type { Project } from '../model'
import { boardName } from '../part-names'
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

const formOf = (project: Project, wall: Id): RevealForm | undefined =>
  entryAt(project.walls, wall)?.reveal.form
const hasNib = (project: Project, wall: Id): boolean => formOf(project, wall)?.endsWith('rebate') === true

const nibDepth = numberField({
  id: 'reveal.nib-depth',
  name: words('Thickness of the nib', 'Dicke des Anschlags'),
  of: 'wall',
  unit: 'mm',
  has: hasNib,
  read: (project, wall) => entryAt(project.walls, wall)?.reveal.nibDepth_mm,
  allowed: allowedNibDepth,
  write: (project, wall, to) =>
    withWall(project, wall, ({ reveal: { nibDepth_mm: _, ...reveal }, ...it }) => ({
      ...it,
      reveal: to ? { ...reveal, nibDepth_mm: to } : reveal,
    })),
})

const nibLap = numberField({
  id: 'reveal.nib-lap',
  name: words('Lap of the nib', 'Breite des Anschlags'),
  of: 'wall',
  unit: 'mm',
  has: hasNib,
  read: (project, wall) => entryAt(project.walls, wall)?.reveal.nibLap_mm,
  allowed: allowedNibLap,
  write: (project, wall, to) =>
    withWall(project, wall, ({ reveal: { nibLap_mm: _, ...reveal }, ...it }) => ({
      ...it,
      reveal: to ? { ...reveal, nibLap_mm: to } : reveal,
    })),
})

const splay = numberField({
  id: 'reveal.splay',
  name: words('Splay of the reveal', 'Schräge der Leibung'),
  of: 'wall',
  unit: 'deg',
  has: (project, wall) => formOf(project, wall) === 'splayed',
  read: (project, wall) => entryAt(project.walls, wall)?.reveal.splay_deg,
  allowed: () => ({
    bounds: { unit: 'deg', min: 0, max: 60 },
    because: words('behind the frame, away from the opening', 'hinter dem Rahmen, von der Öffnung weg'),
  }),
  write: (project, wall, to) =>
    withWall(project, wall, ({ reveal: { splay_deg: _, ...reveal }, ...it }) => ({
      ...it,
      reveal: to ? { ...reveal, splay_deg: to } : reveal,
    })),
})

const board = numberField({
  id: 'reveal.board',
  name: boardName,
  of: 'wall',
  unit: 'mm',
  has: (project, wall) => entryAt(project.walls, wall)?.reveal.board !== undefined,
  read: (project, wall) => entryAt(project.walls, wall)?.reveal.board?.thickness_mm,
  allowed: allowedBoard,
  write: (project, wall, to) =>
    withWall(project, wall, it =>
      it.reveal.board && to
        ? { ...it, reveal: { ...it.reveal, board: { ...it.reveal.board, thickness_mm: to } } }
        : it,
    ),
})

/** What only some forms of a reveal have: nib, splay, board. */
export const revealShapes: readonly Field<number>[] = [nibDepth, nibLap, splay, board]
