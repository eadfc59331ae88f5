import { basisName } from '../../units'
import { filled, same, words } from '../../words'
import type { Sureness } from '../sensitivities'
import { type Table, decimals, difference, empty } from './table'

/** So many inputs are named: those that move the coldest place most. */
const named = 3

/** How sure the coldest place is, and what moves it most. Errors of mesh and of inputs stand apart. */
export const surenessTable = (it: Sureness): Table => ({
  title: words('What moves the coldest place most', 'Was die kälteste Stelle am meisten bewegt'),
  head: [empty, same('K'), empty, empty],
  rows: it.sensitivities
    .slice(0, named)
    .map(one => [
      one.name,
      difference(one.change_K, 2),
      filled(words('per {0}', 'je {0}'), one.by.replace(' ', ' ')),
      basisName[one.basis],
    ]),
  notes: [
    filled(
      words(
        'coldest place {0} °C; the mesh changes it by {1} K (twice the subdivisions)',
        'kälteste Stelle {0} °C; das Netz ändert sie um {1} K (doppelte Teilung)',
      ),
      decimals(it.coldest_C, 2),
      decimals(it.mesh_K, 3),
    ),
    filled(
      words(
        'if each assumed input were off by 10 mm or 10 %, independently: ±{0} K',
        'läge jede angenommene Eingabe unabhängig um 10 mm oder 10 % daneben: ±{0} K',
      ),
      decimals(it.assumed_K, 2),
    ),
  ],
})
