import fc from 'fast-check'
import { expect, it } from 'vitest'
import { steadyList } from '../../app/window/state/steady'

type Row = { readonly key: string; readonly says: number }

const lists = fc.array(
  fc.uniqueArray(fc.record({ key: fc.constantFrom('a', 'b', 'c', 'd'), says: fc.nat(1) }), {
    selector: it => it.key,
  }),
)

it('a steady list says what it is given, and keeps the very members and the very list that say the same', () => {
  fc.assert(
    fc.property(lists, all => {
      const keep = steadyList<Row>(it => it.key)
      let last = keep([])
      for (const next of all) {
        const kept = keep(next)
        expect(kept).toEqual(next)
        for (const it of kept) {
          const was = last.find(one => one.key === it.key)
          if (was) expect(it === was).toBe(it.says === was.says)
        }
        const isSame = next.length === last.length && next.every((it, at) => it.key === last[at]?.key && it.says === last[at].says)
        expect(kept === last).toBe(isSame)
        last = kept
      }
    }),
  )
}) // prettier-ignore
