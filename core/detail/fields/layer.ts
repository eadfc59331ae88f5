import { words } from '../../words'
import { allowedThickness } from '../allowed/thickness'
import { layerOf } from '../find'
import { numberField } from './number-field'
import { withLayer } from './tables'

export const layerThickness = numberField({
  id: 'layer.thickness',
  name: words('Thickness', 'Dicke'),
  of: 'layer',
  unit: 'mm',
  read: (project, layer) => layerOf(project, layer)?.layer.thickness_mm,
  allowed: allowedThickness,
  write: (project, layer, to) =>
    withLayer(project, layer, it => ({ ...it, thickness_mm: to ?? it.thickness_mm })),
})
