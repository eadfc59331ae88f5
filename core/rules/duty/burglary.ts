import { sideFixings } from '../../detail'
import { sides } from '../../kinds'
import { isSome, type Words, words } from '../../words'
import { placed, type Reading } from '../reading'
import { faceOf } from '../readings/fixings'
import { act } from '../remedies/state'
import { rule } from '../rule'

/** How an element is held that has to resist: its largest spacing and corner distance, its least embedment. */
type Held = { readonly spacing_mm: number; readonly corner_mm: number; readonly embedment_mm: number }

const held: Reading<Held> = placed({
  id: 'opening.held',
  name: words('Spacing, corner distance and embedment', 'Abstände, Eckabstand und Verankerung'),
  compute: at => {
    const { fixings } = at.opening
    const all = sides.map(side => sideFixings(at.opening, side, faceOf(at))?.spacing_mm)
    const known = all.flatMap(it => it ?? [])
    const corners = fixings.flatMap(it => it.corner_mm?.value ?? [])
    if (!isSome(fixings) || known.length < sides.length || corners.length < fixings.length) return undefined
    return {
      spacing_mm: Math.max(...known),
      corner_mm: Math.max(...corners),
      embedment_mm: Math.min(...fixings.map(it => it.embedment_mm.value)),
    }
  },
  beneath: ({ opening: { id, fixings } }) =>
    isSome(fixings)
      ? fixings.flatMap(it => [
          { field: 'fixing.corner', part: it.id, stated: it.corner_mm },
          ...sides.map(side => ({ field: `fixing.count-${side}`, part: it.id, stated: it.counts?.[side] })),
        ])
      : [{ field: 'opening.fixings', part: id, stated: undefined }],
})

/** An element that resists burglary is held more closely, and packed behind its locking points. */
export const burglary = rule({
  id: 'burglary',
  about: 'opening',
  title: words('Element that resists burglary', 'Einbruchhemmendes Element'),
  says: words(
    'A burglar-resistant element is fixed more closely and deeper, and packed behind locks and hinges.',
    'Ein einbruchhemmendes Element ist enger und tiefer befestigt und hinter Schlössern und Bändern hinterlegt.',
  ),
  why: words(
    'A lever in the joint finds the frame wherever it is free: between far fixings and behind unpacked locks.',
    'Ein Hebel in der Fuge findet den Rahmen, wo er frei ist: zwischen weiten Befestigungen, hinter hohlen Schlössern.',
  ),
  reads: { held },
  limit: 'burglary',
  band: [],
  applies: ({ opening }) =>
    opening.asked?.burglary?.value === 'yes'
      ? true
      : words('no resistance to burglary is asked for', 'keine Einbruchhemmung ist verlangt'),
  ask: () => [{ given: {} }],
  compare: (known, { spacing_mm, corner_mm, embedment_mm }) => {
    const parts: readonly (readonly [Words, boolean])[] = [
      [words('spacing', 'Abstände'), known.held.spacing_mm <= spacing_mm],
      [words('corner distance', 'Eckabstand'), known.held.corner_mm <= corner_mm],
      [words('embedment', 'Verankerungstiefe'), embedment_mm <= known.held.embedment_mm],
    ]
    return {
      kind: 'presence',
      there: parts.filter(([, is]) => is).map(([name]) => name),
      missing: parts.filter(([, is]) => !is).map(([name]) => name),
    }
  },
  sum: known => [
    { sign: '', value: known.held.spacing_mm, unit: 'mm', says: words('largest spacing', 'größter Abstand') },
    { sign: '', value: known.held.corner_mm, unit: 'mm', says: words('corner distance', 'Eckabstand') },
    { sign: '', value: known.held.embedment_mm, unit: 'mm', says: words('embedment', 'Verankerungstiefe') },
  ],
  *remedies(_known, _then, at) {
    yield act(
      words(
        'Fix the element as the test report of its class says',
        'Element nach dem Prüfbericht seiner Klasse befestigen',
      ),
      'opening.burglary',
      at.opening.id,
    )
  },
  caution: () => ({
    to: words('whoever stands for the class of the element', 'wer für die Klasse des Elements einsteht'),
    handOver: [
      words('packing behind locking and hinge points', 'Hinterlegung an Schloss- und Bandpunkten'),
      words('class of the wall', 'Klasse der Wand'),
    ],
  }),
  examples: [
    {
      when: words('550 mm apart, 140 mm from the corner, 60 mm deep', '550 mm Abstand, 140 mm Eckabstand, 60 mm tief'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { held: { spacing_mm: 550, corner_mm: 140, embedment_mm: 60 } },
      verdict: 'refer',
    },
    {
      when: words('700 mm apart', '700 mm Abstand'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { held: { spacing_mm: 700, corner_mm: 140, embedment_mm: 60 } },
      verdict: 'not-met',
    },
  ],
}) // prettier-ignore
