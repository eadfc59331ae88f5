import type { Id } from '../../geometry'
import { reversalName, reversals } from '../../kinds'
import { type Words, words } from '../../words'
import { type Asked, type Exposure, exposures } from '../asked'
import type { ChoiceField } from '../choice-field'
import { entryAt, fixingOf } from '../find'
import type { Fixing } from '../fixing'
import type { Project } from '../model'
import { type SecondPlane, secondPlanes } from '../sill'
import { choiceField, wordsFrom, yesOrNo } from './choice-field'
import { withFixing, withJoint, withOpening } from './tables'

const reversal = choiceField({
  id: 'joint.reversal',
  name: words('Accepted tighter outside', 'Außen dichter angenommen'),
  of: 'joint',
  choices: wordsFrom(reversals, reversalName),
  because: words('the reason that somebody stands for', 'der Grund, für den jemand einsteht'),
  read: (project, joint) => entryAt(project.joints, joint)?.reversal,
  write: (project, joint, to) =>
    withJoint(project, joint, ({ reversal: _, ...it }) => (to ? { ...it, reversal: to } : it)),
})

const exposureName: Readonly<Record<Exposure, Words>> = {
  exposed: words('exposed to driving rain', 'dem Schlagregen ausgesetzt'),
  sheltered: words('sheltered', 'geschützt'),
  covered: words('covered', 'verdeckt'),
}
const exposure = choiceField({
  id: 'opening.exposure',
  name: words('Exposure of the outer seal', 'Bewitterung der äußeren Dichtung'),
  of: 'opening',
  choices: wordsFrom(exposures, exposureName),
  because: words('how rain reaches the outer seal', 'wie Regen an die äußere Dichtung kommt'),
  read: (project, opening) => entryAt(project.openings, opening)?.asked?.exposure,
  write: (project, opening, to) => withAsked(project, opening, 'exposure', to),
})

/** What the job asks of an opening, or tells of its wall, as yes or no. */
const askedChoice = (
  key: 'guarding' | 'guardProof' | 'burglary' | 'baseKnown',
  id: string,
  name: Words,
  because: Words,
) =>
  choiceField({
    id,
    name,
    of: 'opening',
    choices: yesOrNo,
    because,
    read: (project, opening) => entryAt(project.openings, opening)?.asked?.[key],
    write: (project, opening, to) => withAsked(project, opening, key, to),
  })

const guarding = askedChoice(
  'guarding',
  'opening.guarding',
  words('Keeps people from falling out', 'Absturzsichernd'),
  words('whether the element has to', 'ob das Element es muss'),
)
const guardProof = askedChoice(
  'guardProof',
  'opening.guard-proof',
  words('Fixing proven for guarding', 'Befestigung für Absturzsicherung nachgewiesen'),
  words('no: it follows a spacing table only', 'nein: sie folgt nur einer Abstandstabelle'),
)
const burglary = askedChoice(
  'burglary',
  'opening.burglary',
  words('Resists burglary', 'Einbruchhemmend'),
  words('whether the element has to', 'ob das Element es muss'),
)
const baseKnown = askedChoice(
  'baseKnown',
  'opening.base-known',
  words('Strength of the masonry known', 'Festigkeit des Mauerwerks bekannt'),
  words('else it is tested on site', 'sonst wird am Bau geprüft'),
)

const secondPlaneName: Readonly<Record<SecondPlane, Words>> = {
  none: words('none', 'keine'),
  tray: words('tray', 'Wanne'),
  membrane: words('membrane', 'Folie'),
}
const sillIn = (project: Project, id: Id) => Object.values(project.openings).find(it => it.sill?.id === id)
const secondPlane = choiceField({
  id: 'sill.second-plane',
  name: words('Second drained plane', 'Zweite Dichtebene'),
  of: 'sill',
  choices: wordsFrom(secondPlanes, secondPlaneName),
  because: words('what drains below the outside sill', 'was unter der Fensterbank entwässert'),
  read: (project, sill) => sillIn(project, sill)?.sill?.secondPlane,
  write: (project, sill, to) => {
    const opening = sillIn(project, sill)
    if (!opening?.sill) return project
    const { secondPlane: _, ...rest } = opening.sill
    return withOpening(project, opening.id, it => ({ ...it, sill: to ? { ...rest, secondPlane: to } : rest }))
  },
})

type Drilling = NonNullable<Fixing['drilling']>['value']
const drillingName: Readonly<Record<Drilling, Words>> = {
  rotary: words('rotary, without hammer', 'drehend, ohne Schlag'),
  hammer: words('with hammer', 'mit Schlag'),
}
const drilling = choiceField<Drilling>({
  id: 'fixing.drilling',
  name: words('Drilling', 'Bohrverfahren'),
  of: 'fixing',
  choices: wordsFrom(['rotary', 'hammer'], drillingName),
  because: words('hollow masonry is drilled without hammer', 'Lochsteine werden ohne Schlag gebohrt'),
  read: (project, fixing) => fixingOf(project, fixing)?.fixing.drilling,
  write: (project, fixing, to) =>
    withFixing(project, fixing, ({ drilling: _, ...it }) => (to ? { ...it, drilling: to } : it)),
})

/** The words of joints, openings, sills and fixings. */
export const modelChoices: readonly ChoiceField[] = [
  reversal,
  exposure,
  guarding,
  guardProof,
  burglary,
  baseKnown,
  secondPlane,
  drilling,
]

/** States one word of what is asked of an opening, or takes it back. */
const withAsked = <K extends keyof Asked>(
  project: Project,
  opening: Id,
  key: K,
  to: Asked[K] | undefined,
): Project =>
  withOpening(project, opening, ({ asked, ...it }) => {
    const { [key]: _, ...rest } = asked ?? {}
    // Leaving one word out of what is asked leaves the others as they are.
    const others = rest as Asked
    return { ...it, asked: to ? { ...others, [key]: to } : others }
  })
