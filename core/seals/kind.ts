import type { AnySeal, SealKind } from './seal-kind'

/**
 * Makes a kind out of what it says of its own seals. The list of kinds holds seals of every kind, so each function
 * is handed any seal; the caller has looked the kind up by the seal's own `kind`, which is what its schema promises.
 */
export const sealKind = <S extends AnySeal>(it: SealKind<S>): SealKind => {
  // A seal reaches a kind only through kindOf, by its `kind`; the file's schema has checked the rest.
  const own = (seal: AnySeal): S => seal as S
  return {
    ...it,
    serves: seal => it.serves(own(seal)),
    takesDepth: (seal, width_mm) => it.takesDepth(own(seal), width_mm),
    lay: (seal, bay) => it.lay(own(seal), bay),
    grips: (seal, bay) => it.grips(own(seal), bay),
    sd_m: (seal, plane) => it.sd_m(own(seal), plane),
    takes: seal => it.takes(own(seal)),
    bonds: (seal, bay, behind) => it.bonds(own(seal), bay, behind),
    needs: (seal, bay, length_mm) => it.needs(own(seal), bay, length_mm),
    called: seal => it.called(own(seal)),
  }
}
