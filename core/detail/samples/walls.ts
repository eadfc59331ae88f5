import type { WallPlan } from './build'

/** External insulation on sand-lime masonry. */
export const insulatedMasonry: WallPlan = {
  name: 'External insulation on sand-lime masonry',
  layers: [
    ['lime-cement-render', 8, 'rain', 'finish'],
    ['mineral-wool', 140, 'insulating'],
    ['calcium-silicate-1800', 175, 'bearing'],
    ['gypsum-plaster', 15, 'airtight', 'finish'],
  ],
  cover_mm: 30,
  lining_mm: 20,
}

/** Aerated concrete in one leaf. */
export const aeratedConcrete: WallPlan = {
  name: 'Aerated concrete, one leaf',
  layers: [
    ['lime-cement-render', 15, 'rain', 'finish'],
    ['aerated-concrete-500', 365, 'bearing', 'insulating'],
    ['gypsum-plaster', 10, 'airtight', 'finish'],
  ],
  cover_mm: 15,
  lining_mm: 20,
}
