import type { Project } from '../model'
import { type Words, words } from '../../words'
import { foamOnly } from './foam-only'
import { rightJamb } from './right-jamb'
import { tightOutside } from './tight-outside'

/** A project that comes with the program. */
export type Sample = { readonly file: string; readonly name: Words; readonly project: Project }

/** Every sample, the right one first. */
export const samples: readonly Sample[] = [
  {
    file: 'right-jamb',
    name: words('Right: three planes in a timber jamb', 'Richtig: drei Ebenen an einer Holzleibung'),
    project: rightJamb,
  },
  { file: 'foam-only', name: words('Wrong: foam alone', 'Falsch: nur Ortschaum'), project: foamOnly },
  {
    file: 'tight-outside',
    name: words('Wrong: tighter outside', 'Falsch: außen dichter'),
    project: tightOutside,
  },
]
