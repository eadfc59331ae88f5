import { type FieldAt, conditionsOf, known, knownChoice, winterValues } from '../../detail'
import type { RoomUse } from '../../air'
import { kindOf } from '../../seals'
import type { Result } from '../../units'
import { words } from '../../words'
import type { LowestSurface } from '../../heat'
import type { ZonePhysics } from '../../vapour'
import type { Place } from '../place'
import { type Beneath, placed, type Reading } from '../reading'
import { guessedIn } from './vapour'

/** The coldest place of what is opaque inside, and the air on both sides of it. */
export type Surface = Pick<LowestSurface, 'of' | 'fRsi' | 'temperature_C'> & {
  readonly inside_C: number
  readonly outside_C: number
  readonly vapour_Pa: number
}

/** The use of a room, and whether its air is that of the standard or stated. */
export type RoomKnown = { readonly use: RoomUse; readonly air: 'norm' | 'own' }

/** Water of a winter along the joint, and what a summer could dry of it. */
export type Water = { readonly gathers_kg_m2: number; readonly dries_kg_m2: number }

/** What heat and vapour say of a place; nothing while that is being worked out. */
const physicsAt = (at: Place): Result<ZonePhysics> | undefined => {
  // All of the opening counts as looked at: its place in the wall, its room, its sill.
  const opening = { ...at.opening }
  const { planned_mm: _seen } = at.band
  return at.physics?.(at.project, { opening: opening.id, side: at.side, zone: at.zone })
}

/** What a rule about heat or vapour says where nobody solves them. */
export const solvesHeat = ({ physics }: Place) =>
  physics ? true : words('heat is not solved in this check', 'Wärme wird in dieser Prüfung nicht gerechnet')

/** The coldest opaque place inside: wall, reveal or sill; glass and frames have rules of their own (DIN 4108-2). */
export const coldestSurface: Reading<Surface> = placed({
  id: 'zone.coldest-surface',
  name: words('Coldest place inside, by solving the heat flow', 'Kälteste Stelle innen, aus dem Wärmestrom'),
  compute: at => {
    const found = physicsAt(at)
    const lowest = found?.ok
      ? found.value.lowest.find(it => it.of !== 'frame' && it.of !== 'glass')
      : undefined
    if (!lowest) return undefined
    const { inside, outside } = conditionsOf(at.project, at.opening.id)
    const { of, fRsi, temperature_C } = lowest
    return {
      of,
      fRsi,
      temperature_C,
      inside_C: inside.temperature_C,
      outside_C: outside.temperature_C,
      vapour_Pa: inside.vapour_Pa,
    }
  },
  beneath: at => [...conditionsBeneath(at), ...problemsBeneath(at, physicsAt(at))],
})

export const roomKnown: Reading<RoomKnown> = placed({
  id: 'opening.room-air',
  name: words('Use of the room', 'Nutzung des Raums'),
  compute: at => {
    const { use } = conditionsOf(at.project, at.opening.id)
    const { room } = { ...at.opening }
    const isOwn = room?.inside_C ?? room?.inside_pct ?? room?.humidityClass
    return { use, air: isOwn ? 'own' : 'norm' }
  },
  beneath: at => conditionsBeneath(at).filter(it => it.field === 'opening.room-use'),
})

export const waterInJoint: Reading<Water> = placed({
  id: 'zone.water',
  name: words('Water in the joint, by its planes', 'Tauwasser in der Fuge, aus ihren Ebenen'),
  compute: at => {
    const found = physicsAt(at)
    return found?.ok && found.value.water.ok ? found.value.water.value : undefined
  },
  beneath: at => {
    const found = physicsAt(at)
    return problemsBeneath(at, found?.ok ? found.value.water : found)
  },
})

/** The stated and assumed values of the air on both sides. */
const conditionsBeneath = (at: Place): readonly Beneath[] => {
  const { id } = { ...at.opening }
  return winterValues(id).map(one => ({
    ...one,
    stated: known(at.project, one) ?? knownChoice(at.project, one),
  }))
}

/** What has to be declared before a part can be computed with. */
const problemsBeneath = (at: Place, found: Result<unknown> | undefined): readonly Beneath[] =>
  !found || found.ok
    ? []
    : found.problems.flatMap(({ at: part }) => {
        const seal = at.joint.seals.find(it => it.id === part)
        const named: readonly FieldAt[] = seal
          ? kindOf(seal)
              .serves(seal)
              .flatMap(plane => guessedIn(seal, plane))
          : [{ field: 'layer.mu-dry', part }]
        return named.map(it => ({ ...it, stated: undefined }))
      })
