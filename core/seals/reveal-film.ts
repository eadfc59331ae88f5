import { z } from 'zod'
import type { Seasonal } from '../geometry'
import { assumed, type Stated, stated } from '../units'
import { filled, type Words, words } from '../words'
import {
  bondFrame,
  bondWall,
  type Film,
  filmBonds,
  filmDepth_mm,
  filmGrips,
  girth_mm,
  layFilm,
  onReveal,
  slack,
} from './film'
import { type AnySeal, mostDepth_mm, type SealKind, type SealValue } from './seal-kind'

/** Thickness and conductivity of a fleece-covered film: ours, of no weight for heat. */
const fleece = { thickness_mm: 0.6, lambda_W_mK: 0.22 } as const

/** What a membrane that is bonded to a reveal states beside its resistance. */
export type RevealFilm = Film & {
  readonly slack_mm: Stated<number>
  readonly onReveal_mm?: Stated<number>
}

/** The same in a file. */
export const revealFilmShape = {
  bondFrame_mm: stated(z.number().positive().max(mostDepth_mm)),
  bondWall_mm: stated(z.number().positive().max(300)),
  slack_mm: stated(z.number().min(0).max(40)),
  onReveal_mm: stated(z.number().positive().max(400)).exactOptional(),
}
export const revealFilmValues: readonly SealValue[] = [bondFrame, bondWall, slack, onReveal]

/** Bonds and slack of a fresh one: usual widths, from memory. */
export const freshRevealFilm = {
  bondFrame_mm: assumed(20),
  bondWall_mm: assumed(50),
  slack_mm: assumed(8),
} as const

/**
 * All that kinds of such membranes have in common, whatever they are to vapour: how they lie and hold, what they take,
 * and how wide they are cut. `called` is what the roll is called, without its width.
 */
export const revealFilm = <S extends RevealFilm>(
  resistance: (it: S) => Seasonal | undefined,
  called: Words,
): Pick<SealKind<S & AnySeal>, 'takesDepth' | 'lay' | 'grips' | 'sd_m' | 'takes' | 'bonds' | 'needs'> => ({
  takesDepth: filmDepth_mm,
  lay: (it, bay) => {
    const sd_m = resistance(it)
    return layFilm(it, bay, sd_m ? { ...fleece, sd_m } : fleece)
  },
  grips: filmGrips,
  sd_m: it => resistance(it),
  takes: it => ({ by: 'slack', loop_mm: it.slack_mm.value }),
  bonds: filmBonds,
  needs: (it, bay, length_mm) => [
    {
      what: filled(
        words('{0}, at least {1} wide', '{0}, mindestens {1} breit'),
        called,
        `${Math.ceil(girth_mm(it, bay))}`,
      ),
      amount: length_mm,
      unit: 'mm',
    },
  ],
})
