import type { FrameMaterial } from '../kinds'
import { type Citation, cite } from '../sources'
import { type Words, words } from '../words'

/** How far a frame changes its length in one direction from the installed length, by trade value. */
export type FrameMovement = { readonly movement_mm_m: number; readonly says: Words; readonly cite: Citation }

/**
 * Trade values by frame material. They are less than expansion times temperature range, because the mean temperature
 * of the profile, its steel core and restraint reduce it. The temperature of installing is not known: they count both ways.
 * Aluminium means a profile with a thermal break; its colour is not asked, so the dark one counts, which moves more.
 */
export const frameMovement: Readonly<Record<FrameMaterial, FrameMovement>> = {
  'pvc-white': {
    movement_mm_m: 1.6,
    says: words('trade value for white PVC-U', 'Erfahrungswert für weißes PVC-U'),
    cite: cite('window-lexicon', 'published'),
  },
  'pvc-coloured': {
    movement_mm_m: 2.4,
    says: words('trade value for coloured PVC-U', 'Erfahrungswert für farbiges PVC-U'),
    cite: cite('window-lexicon', 'published'),
  },
  aluminium: {
    movement_mm_m: 1.3,
    says: words(
      'trade value for a dark aluminium profile with thermal break',
      'Erfahrungswert für dunkles Aluminiumprofil mit thermischer Trennung',
    ),
    cite: cite('window-lexicon', 'published'),
  },
  timber: {
    movement_mm_m: 0.5,
    says: words(
      'trade value for timber along the grain, 5 % change of moisture',
      'Erfahrungswert für Holz längs der Faser, 5 % Feuchteänderung',
    ),
    cite: cite('trade', 'memory'),
  },
  'timber-aluminium': {
    movement_mm_m: 0.5,
    says: words(
      'as timber: it carries, the aluminium cover moves on its clips',
      'wie Holz: es trägt, die Aluminiumschale bewegt sich auf ihren Haltern',
    ),
    cite: cite('convention', 'ours'),
  },
}
