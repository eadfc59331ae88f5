import type { Id } from '../../geometry'
import { type RevealForm, revealFormName, revealForms, type Side, sideName, sides } from '../../kinds'
import { kindOf } from '../../seals'
import { assumed, specified, type Stated } from '../../units'
import { type Some, type Words, words } from '../../words'
import { allowedNibDepth, allowedNibLap } from '../allowed/nib'
import { type Box, type Coupling, couplings } from '../box'
import type { ChoiceField, Word } from '../choice-field'
import { entryAt, fixingOf, openingsWith, sealOf, wallOf } from '../find'
import { type FixingKind, fixingKindName, fixingKinds } from '../fixing'
import type { Project, Reveal } from '../model'
import { listedPart, singlePart } from '../opening-parts'
import { choiceField, wordsFrom, yesOrNo } from './choice-field'
import { withBox, withFixing, withListed, withSeal, withWall } from './tables'

const ofReveal = (project: Project, wall: Id): Reveal | undefined => entryAt(project.walls, wall)?.reveal

/**
 * What a form of reveal needs beside itself, where nobody has said so yet: usual sizes, common practice, no source; a nib
 * is no thicker than the frames before or behind it leave.
 */
const needed = (project: Project, wall: Id, form: RevealForm, now: Reveal): Partial<Reveal> => {
  if (form === 'splayed') return now.splay_deg ? {} : { splay_deg: assumed(10) }
  if (form === 'butt') return {}
  const formed = withWall(project, wall, it => ({ ...it, reveal: { ...it.reveal, form } }))
  const most = (allowed: typeof allowedNibDepth) => allowed(formed, wall).bounds.max ?? Infinity
  return {
    ...(now.nibDepth_mm ? {} : { nibDepth_mm: assumed(Math.min(115, most(allowedNibDepth))) }),
    ...(now.nibLap_mm ? {} : { nibLap_mm: assumed(Math.min(55, most(allowedNibLap))) }),
  }
}

const revealForm = choiceField<RevealForm>({
  id: 'reveal.form',
  name: words('Form of the reveal', 'Form der Leibung'),
  of: 'wall',
  choices: wordsFrom(revealForms, revealFormName),
  because: words('how the bearing layer receives the frame', 'wie die tragende Schicht den Rahmen aufnimmt'),
  isPlain: true,
  read: (project, wall) => {
    const reveal = ofReveal(project, wall)
    return reveal && specified(reveal.form)
  },
  write: (project, wall, to) =>
    to === undefined
      ? project
      : withWall(project, wall, it => ({
          ...it,
          reveal: { ...it.reveal, form: to.value, ...needed(project, wall, to.value, it.reveal) },
        })),
})

const couplingName: Readonly<Record<Coupling, Words>> = {
  sealed: words('sealed inside and outside', 'innen und außen gedichtet'),
  foam: words('foamed only', 'nur ausgeschäumt'),
  none: words('not sealed', 'nicht gedichtet'),
}

const withBoxWord = <K extends 'coupling' | 'ends' | 'passage'>(
  project: Project,
  box: Id,
  key: K,
  to: Box[K] | undefined,
): Project =>
  withBox(project, box, it => {
    const { [key]: _, ...rest } = it
    // Only what is told of sealing is left out: all that a box needs stays.
    return to === undefined ? (rest as Box) : { ...it, [key]: to }
  })

const boxYesNo = (key: 'ends' | 'passage', id: string, name: Words, because: Words): ChoiceField =>
  choiceField({
    id,
    name,
    of: 'box',
    choices: yesOrNo,
    because,
    read: (project, box) => singlePart(project, 'box', box)?.part[key],
    write: (project, box, to) => withBoxWord(project, box, key, to),
  })

const boxWords: readonly ChoiceField[] = [
  choiceField<Coupling>({
    id: 'box.coupling',
    name: words('Coupling of box and frame', 'Kopplung von Kasten und Rahmen'),
    of: 'box',
    choices: wordsFrom(couplings, couplingName),
    because: words('the head is a joint of its own', 'der Sturz ist eine eigene Fuge'),
    read: (project, box) => singlePart(project, 'box', box)?.part.coupling,
    write: (project, box, to) => withBoxWord(project, box, 'coupling', to),
  }),
  boxYesNo(
    'ends',
    'box.ends',
    words('Ends of the box sealed', 'Stirnseiten des Kastens gedichtet'),
    words('to the masonry at both ends', 'an beiden Enden zum Mauerwerk'),
  ),
  boxYesNo(
    'passage',
    'box.passage',
    words('Passage of belt or cable sealed', 'Gurt- oder Kabeldurchführung gedichtet'),
    words('through the room side of the box', 'durch die Raumseite des Kastens'),
  ),
]

const fixingKind = choiceField<FixingKind>({
  id: 'fixing.kind',
  name: words('Kind of fixing', 'Art der Befestigung'),
  of: 'fixing',
  choices: wordsFrom(fixingKinds, fixingKindName),
  because: words('how the frame is held', 'wie der Rahmen gehalten wird'),
  isPlain: true,
  read: (project, fixing) => {
    const found = fixingOf(project, fixing)
    return found && specified(found.fixing.kind)
  },
  write: (project, fixing, to) =>
    to ? withFixing(project, fixing, it => ({ ...it, kind: to.value })) : project,
})

const blockWord = <W extends string>(
  key: 'kind' | 'side',
  it: {
    readonly id: string
    readonly name: Words
    readonly because: Words
    readonly choices: Some<Word & { readonly value: W }>
  },
): ChoiceField =>
  choiceField<W>({
    ...it,
    of: 'block',
    isPlain: true,
    read: (project, block) => {
      const found = listedPart(project, 'blocks', block)
      // The words offered are those of the block's own member.
      return found && (specified(found.part[key]) as unknown as Stated<W>)
    },
    write: (project, block, to) =>
      to ? withListed(project, 'blocks', block, one => ({ ...one, [key]: to.value })) : project,
  })

const blockWords: readonly ChoiceField[] = [
  blockWord<'support' | 'distance'>('kind', {
    id: 'block.kind',
    name: words('What the block does', 'Was der Klotz tut'),
    because: words('carry the frame, or hold it off the flank', 'den Rahmen tragen oder auf Abstand halten'),
    choices: wordsFrom(['support', 'distance'], {
      support: words('carries', 'trägt'),
      distance: words('holds the distance', 'hält Abstand'),
    }),
  }),
  blockWord<Side>('side', {
    id: 'block.side',
    name: words('Side of the block', 'Seite des Klotzes'),
    because: words('of the opening', 'der Öffnung'),
    choices: wordsFrom(sides, sideName),
  }),
]

const hasNib = (project: Project, joint: Id): boolean =>
  openingsWith(project, joint).some(it => wallOf(project, it.id).reveal.form.endsWith('rebate'))

/** Which gap a seal closes, where its kind may lie in the gap of a rebate. */
const sealGap = choiceField<'joint' | 'rebate'>({
  id: 'seal.gap',
  name: words('Gap that it closes', 'Fuge, die sie schließt'),
  of: 'seal',
  choices: wordsFrom(['joint', 'rebate'], {
    joint: words('between flank and frame', 'zwischen Leibung und Rahmen'),
    rebate: words('between nib and frame', 'zwischen Anschlag und Rahmen'),
  }),
  because: words('a rebate has a gap of its own', 'ein Anschlag hat eine eigene Fuge'),
  isPlain: true,
  has: (project, seal) => {
    const found = sealOf(project, seal)
    return found !== undefined && kindOf(found.seal).inRebate === true && hasNib(project, found.joint.id)
  },
  read: (project, seal) => {
    const found = sealOf(project, seal)?.seal
    return found && specified(found.gap ?? 'joint')
  },
  write: (project, seal, to) =>
    withSeal(project, seal, ({ gap: _, ...it }) => (to?.value === 'rebate' ? { ...it, gap: 'rebate' } : it)),
})

/** The words of reveals, boxes, fixings and blocks, and of where seals lie. */
export const partChoices: readonly ChoiceField[] = [
  revealForm,
  ...boxWords,
  fixingKind,
  ...blockWords,
  sealGap,
]
