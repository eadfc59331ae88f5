import { type Project, materialOf, layerOf } from '../../detail'
import type { Psi } from '../../heat'
import { inWords } from '../../units'
import { filled, same, type Words, words } from '../../words'
import { type Table, decimals, difference, empty } from './table'

/** Psi with every term, so that it can be worked again by hand: L2D − U·l of the wall − U·l of the window. */
export const psiTable = (project: Project, psi: Psi, coupling_W_mK: number): Table => {
  const { wall, element } = psi
  const share = (u_W_m2K: number, length_mm: number) => (u_W_m2K * length_mm) / 1000
  const row = (name: Words, u_W_m2K: number, length_mm: number) => [
    name,
    decimals(u_W_m2K, 4),
    decimals(length_mm / 1000, 4),
    difference(-share(u_W_m2K, length_mm), 5),
  ]
  return {
    title: words('Psi, worked again by hand', 'Psi zum Nachrechnen'),
    head: [empty, same('U, W/(m²·K)'), same('l, m'), same('W/(m·K)')],
    rows: [
      [words('whole section, L2D', 'ganzer Schnitt, L2D'), empty, empty, decimals(coupling_W_mK, 5)],
      row(
        words('less the wall up to the reveal', 'weniger Wand bis zur Leibung'),
        wall.u_W_m2K,
        wall.length_mm,
      ),
      row(words('less the window alone', 'weniger Fenster allein'), element.u_W_m2K, element.length_mm),
      [same('Psi'), empty, empty, decimals(psi.psi_W_mK, 4)],
    ],
    notes: [
      filled(
        words('U of the wall = 1 / ({0} + {1} + {2}) m²K/W', 'U der Wand = 1 / ({0} + {1} + {2}) m²K/W'),
        decimals(wall.outside_m2K_W, 2),
        inWords(language => wall.layers.map(it => decimals(it.resistance_m2K_W, 4)[language]).join(' + ')),
        decimals(wall.inside_m2K_W, 2),
      ),
      ...wall.layers.map(it =>
        filled(
          same('{0}: {1} mm / {2} W/(m·K) = {3} m²K/W'),
          nameOf(project, it.part),
          decimals(it.thickness_mm, 1),
          decimals(it.lambda_W_mK, 3),
          decimals(it.resistance_m2K_W, 4),
        ),
      ),
    ],
  }
}

const nameOf = (project: Project, part: string): Words => {
  const layer = layerOf(project, part)?.layer
  return (layer && materialOf(project, layer.material)?.name) ?? same(part)
}
