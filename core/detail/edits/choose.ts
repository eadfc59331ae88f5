import { z } from 'zod'
import { practice as practiceOfId } from '../../practice'
import { ok, refused } from '../../units'
import { words } from '../../words'
import type { EditKind } from '../edit'
import { withFrame, withOpening } from '../fields/tables'
import { profiles } from '../profiles/all'
import { standing } from './standing'
import { entryAt } from '../find'

export const choosePractice: EditKind<'choose-practice'> = {
  kind: 'choose-practice',
  schema: z.strictObject({ kind: z.literal('choose-practice'), practice: z.string() }),
  apply: (project, { practice }) => {
    const found = practiceOfId(practice)
    if (found === undefined)
      return refused({ at: practice, say: words('no such practice', 'dieses Regelwerk gibt es nicht') })
    return ok({ ...project, practice: { ...project.practice, id: found.id, edition: found.edition } })
  },
}

/** Gives a frame other outlines; its material follows where the present one is not made so. */
export const chooseProfile: EditKind<'choose-profile'> = {
  kind: 'choose-profile',
  schema: z.strictObject({ kind: z.literal('choose-profile'), frame: z.string(), profile: z.string() }),
  apply: (project, { frame, profile }) => {
    const found = profiles.find(it => it.id === profile)
    const [first] = found?.materials ?? []
    if (found === undefined || first === undefined || entryAt(project.frames, frame) === undefined) {
      return refused({ at: profile, say: words('no such profile', 'dieses Profil gibt es nicht') })
    }
    const next = withFrame(project, frame, it => ({
      ...it,
      profile,
      material: found.materials.includes(it.material) ? it.material : first,
    }))
    return standing(next)
  },
}

export const chooseWall: EditKind<'choose-wall'> = {
  kind: 'choose-wall',
  schema: z.strictObject({ kind: z.literal('choose-wall'), opening: z.string(), wall: z.string() }),
  apply: (project, { opening, wall }) =>
    entryAt(project.walls, wall) && entryAt(project.openings, opening)
      ? standing(withOpening(project, opening, it => ({ ...it, wall })))
      : refused({ at: wall, say: words('no such wall', 'diese Wand gibt es nicht') }),
}
