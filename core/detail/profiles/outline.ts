import type { Fill, Outline, Point } from '../../geometry'
import { type Words, words } from '../../words'
import type { Body, Member } from './profile'

/** A rectangle between two corners, counter-clockwise. */
export const box = (u0: number, v0: number, u1: number, v1: number): Outline => [
  [u0, v0],
  [u1, v0],
  [u1, v1],
  [u0, v1],
]

export const solid = (member: Member, material: string, outline: Outline): Body => ({
  member,
  fill: { kind: 'material', material },
  outline,
  of: member === 'glazing' ? 'glass' : 'frame',
})

export const air = (
  member: Member,
  outline: Outline,
  vented: 'closed' | 'slightly' | 'open' = 'closed',
): Body => ({
  member,
  fill: { kind: 'air', vented } satisfies Fill,
  outline,
  of: 'frame',
})

/** A tube: its outer outline in one material, and air inside. */
export const tube = (
  member: Member,
  material: string,
  [u0, v0]: Point,
  [u1, v1]: Point,
  wall_mm: number,
): readonly Body[] => [
  solid(member, material, box(u0, v0, u1, v1)),
  air(member, box(u0 + wall_mm, v0 + wall_mm, u1 - wall_mm, v1 - wall_mm)),
]

/** What an insulating glass unit is made of, outside to inside. */
export type Unit = { readonly panes_mm: readonly number[]; readonly gaps_mm: readonly number[] }

/** Usual units: 4 mm panes, spaces of 16 mm. */
export const double: Unit = { panes_mm: [4, 4], gaps_mm: [16] }
export const triple: Unit = { panes_mm: [4, 4, 4], gaps_mm: [16, 16] }

/** How thick a unit is. */
export const unitDepth_mm = (unit: Unit): number =>
  [...unit.panes_mm, ...unit.gaps_mm].reduce((sum, it) => sum + it, 0)

/** How a unit is called: by its panes. */
export const glazingName = (unit: Unit): Words =>
  unit.panes_mm.length === 2
    ? words('double glazing', 'Zweifachglas')
    : words('triple glazing', 'Dreifachglas')

/**
 * An insulating glass unit from its edge at `u` to `reach`, its outer face at `v`: panes, gas spaces, spacers and the
 * sealed edge behind them. Outlines of our own; gas is taken as still air of its equivalent conductivity.
 */
export const glazing = (u: number, v: number, reach: number, unit: Unit): readonly Body[] => {
  const bodies: Body[] = []
  let at = v
  unit.panes_mm.forEach((pane, i) => {
    bodies.push(solid('glazing', 'glass', box(u, at, reach, at + pane)))
    at += pane
    const gap = unit.gaps_mm[i]
    if (gap === undefined) return
    bodies.push(solid('glazing', 'polysulphide', box(u, at, u + 4, at + gap)))
    bodies.push(solid('glazing', 'polypropylene', box(u + 4, at, u + 11, at + gap)))
    bodies.push(solid('glazing', 'glazing-gas', box(u + 11, at, reach, at + gap)))
    at += gap
  })
  return bodies
}
