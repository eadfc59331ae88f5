import { z } from 'zod'
import { planes } from '../kinds'
import { type Stated, stated } from '../units'
import { words } from '../words'
import { sealKind } from './kind'
import type { SealValue } from './seal-kind'
import { layStopBead } from './stop-bead'
import { yesNo } from './yes-no'

const longest: SealValue = {
  id: 'render-bead.longest',
  key: 'longest_m',
  name: words('For frame edges up to', 'Für Rahmenkanten bis'),
  unit: 'm',
  bounds: { unit: 'm', min: 0.5, max: 12 },
  because: words('as declared by the product: what its tape moves along', 'nach Angabe des Produkts: was sein Band mitmacht'), // prettier-ignore
}

type RenderStopBead = {
  readonly kind: 'render-stop-bead'
  readonly id: string
  readonly plane: (typeof planes)[number]
  readonly longest_m?: Stated<number>
  /** whether bead, mitres and butts are tested against driving rain */
  readonly tested?: Stated<'yes' | 'no'>
}

/** A bead on the outer face of the frame that render ends at. It keeps out rain only where it is tested for that. */
export const renderStopBead = sealKind<RenderStopBead>({
  kind: 'render-stop-bead',
  name: words('Render stop bead', 'Putzanschlussprofil außen'),
  shows: 'pvc-u',
  schema: z.strictObject({
    kind: z.literal('render-stop-bead'),
    id: z.string(),
    plane: z.enum(planes),
    longest_m: stated(z.number().positive().max(12)).exactOptional(),
    tested: stated(z.enum(['yes', 'no'])).exactOptional(),
  }),
  planes: ['outer'],
  // mitres and butts leak; not stated counts as not tested
  serves: it => (it.tested?.value === 'yes' ? [it.plane] : []),
  values: [longest],
  choices: [
    {
      id: 'render-bead.tested',
      key: 'tested',
      name: words('Tested against driving rain', 'Schlagregendicht geprüft'),
      choices: yesNo,
      because: words('as declared by the product', 'nach Angabe des Produkts'),
    },
  ],
  fresh: (id, plane) => ({ kind: 'render-stop-bead', id, plane }),
  takesDepth: () => 0,
  lay: (it, bay) => ({ regions: layStopBead(it, bay), lines: [] }),
  grips: () => [],
  sd_m: () => undefined,
  takes: () => ({ by: 'nothing' }),
  bonds: () => [],
  needs: (_it, _bay, length_mm) => [
    { what: words('render stop bead', 'Putzanschlussprofil außen'), amount: length_mm, unit: 'mm' },
  ],
  called: () => words('bead between render and frame', 'Profil zwischen Außenputz und Rahmen'),
})
