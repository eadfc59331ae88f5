import { z } from 'zod'
import { planes } from '../kinds'
import { type Stated, stated } from '../units'
import { words } from '../words'
import { sealKind } from './kind'
import type { SealValue } from './seal-kind'
import { layStopBead } from './stop-bead'

const longest: SealValue = {
  id: 'plaster-bead.longest',
  key: 'longest_m',
  name: words('For frame edges up to', 'Für Rahmenkanten bis'),
  unit: 'm',
  bounds: { unit: 'm', min: 0.5, max: 12 },
  because: words('as declared by the product: what its tape moves along', 'nach Angabe des Produkts: was sein Band mitmacht'), // prettier-ignore
}

type PlasterStopBead = {
  readonly kind: 'plaster-stop-bead'
  readonly id: string
  readonly plane: (typeof planes)[number]
  readonly longest_m?: Stated<number>
}

/** A bead on the inner face of the frame that plaster ends at. It parts plaster and frame; it makes nothing airtight. */
export const plasterStopBead = sealKind<PlasterStopBead>({
  kind: 'plaster-stop-bead',
  name: words('Plaster stop bead', 'Putzanschlussprofil innen'),
  shows: 'pvc-u',
  schema: z.strictObject({
    kind: z.literal('plaster-stop-bead'),
    id: z.string(),
    plane: z.enum(planes),
    longest_m: stated(z.number().positive().max(12)).exactOptional(),
  }),
  planes: ['inner'],
  serves: () => [],
  values: [longest],
  choices: [],
  fresh: (id, plane) => ({ kind: 'plaster-stop-bead', id, plane }),
  takesDepth: () => 0,
  lay: (it, bay) => ({ regions: layStopBead(it, bay), lines: [] }),
  grips: () => [],
  sd_m: () => undefined,
  takes: () => ({ by: 'nothing' }),
  bonds: () => [],
  needs: (_it, _bay, length_mm) => [
    { what: words('plaster stop bead', 'Putzanschlussprofil innen'), amount: length_mm, unit: 'mm' },
  ],
  called: () => words('bead between plaster and frame', 'Profil zwischen Innenputz und Rahmen'),
})
