import type { Id } from '../geometry'
import { type Side, sideName } from '../kinds'
import { type Words, words } from '../words'
import { openingOf } from './find'
import type { Project } from './model'

/** A side of an opening as people call it: its foot is a threshold where one walks through. */
export const sideNameAt = (project: Project, opening: Id, side: Side): Words =>
  side === 'sill' && openingOf(project, opening).threshold ? footName : sideName[side]

const footName: Words = words('threshold', 'Schwelle')
