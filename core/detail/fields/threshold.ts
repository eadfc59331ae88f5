import type { Id } from '../../geometry'
import type { Stated, Unit } from '../../units'
import { type Words, words } from '../../words'
import type { Allowed } from '../allowed/position'
import type { Field } from '../field'
import { singlePart } from '../opening-parts'
import type { Project } from '../model'
import { hasChannel, type Threshold } from '../threshold'
import { numberField } from './number-field'
import { withThreshold } from './tables'

type Value = {
  readonly id: string
  readonly name: Words
  readonly unit: Unit
  readonly allowed: Allowed
  readonly of: (it: Threshold) => Stated<number>
  readonly with: (it: Threshold, to: Stated<number>) => Threshold
}

const lengths = (min: number, max: number, because: Words): Allowed => ({
  bounds: { unit: 'mm', min, max },
  because,
})

const inFloor = words('in the floor inside', 'im Fußboden innen')
const before = words('before the door', 'vor der Tür')

/** A layer that is laid flat: its thickness. */
const laid = (
  key: 'base' | 'finish' | 'insulation' | 'paving',
  id: string,
  name: Words,
  allowed: Allowed,
): Value => ({
  id,
  name,
  unit: 'mm',
  allowed,
  of: it => it[key].thickness_mm,
  with: (it, thickness_mm) => ({ ...it, [key]: { ...it[key], thickness_mm } }),
})

const length = (
  key: 'height_mm' | 'screed_mm' | 'slab_mm' | 'bed_mm' | 'channelWidth_mm' | 'channelDepth_mm',
  id: string,
  name: Words,
  allowed: Allowed,
): Value => ({
  id,
  name,
  unit: 'mm',
  allowed,
  of: it => it[key],
  with: (it, to) => ({ ...it, [key]: to }),
})

const values: readonly Value[] = [
  length('height_mm', 'threshold.height', words('Height of the profile', 'Höhe des Profils'), lengths(10, 120, words('from the joint below it to its top', 'von der Fuge darunter bis Oberkante'))),
  laid('base', 'threshold.base', words('Height of the base', 'Höhe des Sockels'), lengths(10, 400, words('below the joint', 'unter der Fuge'))),
  laid('finish', 'threshold.finish', words('Floor finish', 'Bodenbelag'), lengths(2, 80, inFloor)),
  length('screed_mm', 'threshold.screed', words('Screed', 'Estrich'), lengths(20, 150, inFloor)),
  laid('insulation', 'threshold.insulation', words('Insulation below the screed', 'Dämmung unter dem Estrich'), lengths(5, 400, inFloor)),
  length('slab_mm', 'threshold.slab', words('Slab', 'Bodenplatte'), lengths(80, 600, words('on the ground', 'auf dem Erdreich'))),
  laid('paving', 'threshold.paving', words('Paving outside', 'Belag außen'), lengths(5, 150, before)),
  length('bed_mm', 'threshold.bed', words('Gravel bed below it', 'Kiesbett darunter'), lengths(20, 500, before)),
  {
    id: 'threshold.fall',
    name: words('Amount of the fall outside', 'Größe des Gefälles außen'),
    unit: 'pct',
    allowed: { bounds: { unit: 'pct', min: 0, max: 10 }, because: words('which way it falls is told of the opening', 'wohin es fällt, ist bei der Öffnung genannt') },
    of: it => it.fall_pct,
    with: (it, fall_pct) => ({ ...it, fall_pct }),
  },
  length('channelWidth_mm', 'threshold.channel-width', words('Width of the drain channel', 'Breite der Entwässerungsrinne'), lengths(60, 500, before)),
  length('channelDepth_mm', 'threshold.channel-depth', words('Depth of the drain channel', 'Tiefe der Entwässerungsrinne'), lengths(40, 300, before)),
] // prettier-ignore

/** A channel has sizes where one is told. */
const drained = (project: Project, part: Id): boolean =>
  hasChannel(singlePart(project, 'threshold', part)?.opening.told)

/** The numbers of a threshold. Its levels are told of the opening. */
export const thresholdFields: readonly Field<number>[] = values.map(value =>
  numberField({
    id: value.id,
    name: value.name,
    of: 'threshold',
    unit: value.unit,
    ...(value.id.startsWith('threshold.channel-') ? { has: drained } : {}),
    read: (project, part) => {
      const found = singlePart(project, 'threshold', part)
      return found && value.of(found.part)
    },
    allowed: () => value.allowed,
    write: (project, part, to) =>
      to === undefined ? project : withThreshold(project, part, it => value.with(it, to)),
  }),
)
