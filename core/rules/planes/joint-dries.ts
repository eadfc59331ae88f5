import { exactly } from '../../units'
import { noVapourOnGround } from '../../vapour'
import { words } from '../../words'
import { solvesHeat, waterInJoint } from '../readings/physics'
import { replacePlanes } from '../remedies/remedies'
import { rule } from '../rule'

/** Little water gathers in the joint in winter, and it dries in summer. */
export const jointDries = rule({
  id: 'joint-dries',
  about: 'zone',
  title: words('Water in the joint dries', 'Tauwasser in der Fuge trocknet'),
  says: words(
    'By the two periods along the middle of the joint, little water gathers in winter, and it can dry in summer.',
    'Nach den zwei Perioden entlang der Fugenmitte fällt im Winter wenig Tauwasser an, und im Sommer kann es austrocknen.',
  ),
  why: words(
    'Water that stays over the years soaks foam and wood, and mould follows. This estimate in one dimension sees diffusion alone.',
    'Wasser, das über Jahre bleibt, durchnässt Schaum und Holz, Schimmel folgt. Diese eindimensionale Abschätzung sieht nur die Diffusion.',
  ),
  reads: { water: waterInJoint },
  limit: 'condensate',
  band: [],
  applies: at => {
    if (at.joint.seals.length === 0) return words('the joint is empty', 'die Fuge ist leer')
    return at.side === 'sill' && at.opening.threshold ? noVapourOnGround : solvesHeat(at)
  },
  ask: () => [{ given: {} }],
  compare: ({ water }, { most_kg_m2, dries }) => ({
    kind: 'amount',
    actual: exactly(water.gathers_kg_m2),
    required: {
      unit: 'kg_m2',
      max: dries === 'yes' && water.gathers_kg_m2 > 0 ? Math.min(most_kg_m2, water.dries_kg_m2) : most_kg_m2,
    },
  }),
  sum: ({ water }) => [
    { sign: '', value: water.gathers_kg_m2, unit: 'kg_m2', says: words('gathers in 90 cold days', 'fällt in 90 kalten Tagen an') },
    { sign: '', value: water.dries_kg_m2, unit: 'kg_m2', says: words('could dry in 90 warm days', 'könnte in 90 warmen Tagen trocknen') },
  ], // prettier-ignore
  *remedies(_known, _then, at) {
    yield* replacePlanes(at, ['inner'])
    yield* replacePlanes(at, ['outer'])
    yield* replacePlanes(at, ['outer', 'inner'])
  },
  examples: [
    {
      when: words('no water gathers', 'es fällt kein Tauwasser an'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { water: { gathers_kg_m2: 0, dries_kg_m2: 0 } },
      verdict: 'met',
    },
    {
      when: words('0.2 kg/m² that can dry', '0,2 kg/m², die trocknen können'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { water: { gathers_kg_m2: 0.2, dries_kg_m2: 0.6 } },
      verdict: 'met',
    },
    {
      when: words('0.3 kg/m² of which 0.25 can dry', '0,3 kg/m², von denen 0,25 trocknen können'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { water: { gathers_kg_m2: 0.3, dries_kg_m2: 0.25 } },
      verdict: 'advice',
    },
    {
      when: words('5.6 kg/m² behind an open inner side', '5,6 kg/m² hinter einer offenen Innenseite'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { water: { gathers_kg_m2: 5.643, dries_kg_m2: 5.128 } },
      verdict: 'not-met',
    },
    {
      when: words('a rubber sheet whose resistance nobody states', 'eine Kautschukbahn, deren Widerstand niemand nennt'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: {},
      verdict: 'unknown',
    },
  ], // prettier-ignore
})
