import type { Memory } from './memory'
import type { Place } from './place'

/** A project as it is asked about, under a practice. */
export type Job = Pick<Place, 'project' | 'practice' | 'uses' | 'physics'> & {
  /** what rules answered before, here or in a project that is much the same */
  readonly memory: Memory
}
