import { expect, test } from 'vitest'
import { fixingKinds, frameOf, jointOf, openingOf, profiles, starters, wallOf } from '../../core/detail'
import { sides } from '../../core/kinds'
import { sealKinds } from '../../core/seals'
import { randomDetail } from '../given/random-detail'

const many = Array.from({ length: 2000 }, (_, seed) => randomDetail(seed))

/** How many of the details have each of some names, as a share. */
const sharesOf = (
  names: readonly string[],
  of: (it: (typeof many)[number]) => readonly string[],
): ReadonlyMap<string, number> =>
  new Map(names.map(name => [name, many.filter(it => of(it).includes(name)).length / many.length]))

/** What of the newer parts a detail shows. */
const partsIn = (it: (typeof many)[number]): readonly string[] => {
  const opening = openingOf(it.project, it.place.opening)
  return [
    ...(opening.box && it.place.side === 'head' ? ['box at the head'] : []),
    ...(jointOf(it.project, it.place.zone).seals.some(seal => seal.gap === 'rebate')
      ? ['seal in a rebate']
      : []),
    ...opening.fixings.map(one => one.kind),
    ...(sides.some(side => opening.sides[side].length > 1) ? ['split side'] : []),
  ]
}

const subjects = [
  ['walls', sharesOf(starters.map(it => it.name.en), it => [wallOf(it.project, it.place.opening).name])],
  ['reveals', sharesOf(['butt', 'splayed', 'inner-rebate', 'outer-rebate'], it => [wallOf(it.project, it.place.opening).reveal.form])],
  ['sides', sharesOf(sides, it => [it.place.side])],
  ['profiles', sharesOf(profiles.map(it => it.id), it => [frameOf(it.project, it.place.opening).profile])],
  ['parts', sharesOf(['box at the head', 'seal in a rebate', ...fixingKinds, 'split side'], partsIn)],
  ['seals', sharesOf(sealKinds.map(it => it.kind), it => jointOf(it.project, it.place.zone).seals.map(seal => seal.kind))],
] as const // prettier-ignore

test.each(subjects)('all %s occur in random details, none in less than 3 of 100', (subject, shares) => {
  const written = [...shares].map(([name, share]) => `${name} ${(100 * share).toFixed(1)} %`)
  process.stdout.write(`${subject} of ${many.length} random details: ${written.join(', ')}\n`)
  for (const [name, share] of shares) expect(share, name).toBeGreaterThan(0.03)
})
