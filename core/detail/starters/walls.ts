import { words } from '../../words'
import type { WallPlan } from './wall-plan'

/** Solid brick, rendered. */
export const solidBrick: WallPlan = {
  id: 'solid-brick',
  name: words('Solid brick', 'Vollziegel'),
  layers: [
    ['lime-cement-render', 20, 'rain', 'finish'],
    ['clay-brick-1800', 365, 'bearing'],
    ['gypsum-plaster', 15, 'airtight', 'finish'],
  ],
  cover_mm: 20,
  lining_mm: 20,
  position_mm: 110,
}

/** Brick with a nib at the outside that covers the frame. */
export const rebatedBrick: WallPlan = {
  id: 'rebated-brick',
  name: words('Solid brick with inner rebate', 'Vollziegel mit Innenanschlag'),
  layers: [
    ['clay-brick-1800', 380, 'bearing', 'rain'],
    ['gypsum-plaster', 20, 'airtight', 'finish'],
  ],
  cover_mm: 0,
  lining_mm: 20,
  splay_deg: 0,
  rebate: { at: 'inner-rebate', depth_mm: 115, lap_mm: 55 },
  position_mm: 123,
}

/** Brick with a nib at the inside that the frame is set against from outside. */
export const outerRebatedBrick: WallPlan = {
  id: 'outer-rebated-brick',
  name: words('Solid brick with outer rebate', 'Vollziegel mit Außenanschlag'),
  layers: [
    ['lime-cement-render', 20, 'rain', 'finish'],
    ['clay-brick-1800', 365, 'bearing'],
    ['gypsum-plaster', 15, 'airtight', 'finish'],
  ],
  cover_mm: 15,
  lining_mm: 15,
  rebate: { at: 'outer-rebate', depth_mm: 115, lap_mm: 20 },
  position_mm: 160,
}

/** Perforated block with an insulating render. */
export const perforatedBlock: WallPlan = {
  id: 'perforated-block',
  name: words('Perforated block', 'Hochlochziegel'),
  layers: [
    ['lime-cement-render', 20, 'rain', 'finish'],
    ['hollow-brick-1200', 365, 'bearing', 'insulating'],
    ['gypsum-plaster', 15, 'airtight', 'finish'],
  ],
  cover_mm: 20,
  lining_mm: 20,
  position_mm: 140,
}

/** Aerated concrete in one leaf, with a splayed reveal. */
export const aeratedConcrete: WallPlan = {
  id: 'aerated-concrete',
  name: words('Aerated concrete, one leaf', 'Porenbeton, einschalig'),
  layers: [
    ['lime-cement-render', 15, 'rain', 'finish'],
    ['aerated-concrete-500', 365, 'bearing', 'insulating'],
    ['gypsum-plaster', 10, 'airtight', 'finish'],
  ],
  cover_mm: 15,
  lining_mm: 20,
  splay_deg: 12,
  position_mm: 120,
}

/** External insulation on sand-lime masonry. */
export const insulatedMasonry: WallPlan = {
  id: 'insulated-masonry',
  name: words('External insulation on sand-lime masonry', 'Außendämmung auf Kalksandstein'),
  layers: [
    ['lime-cement-render', 8, 'rain', 'finish'],
    ['mineral-wool', 140, 'insulating'],
    ['calcium-silicate-1800', 175, 'bearing'],
    ['gypsum-plaster', 15, 'airtight', 'finish'],
  ],
  cover_mm: 30,
  lining_mm: 20,
  position_mm: 15,
}

/** External insulation on reinforced concrete. */
export const insulatedConcrete: WallPlan = {
  id: 'insulated-concrete',
  name: words('External insulation on concrete', 'Außendämmung auf Beton'),
  layers: [
    ['lime-cement-render', 8, 'rain', 'finish'],
    ['eps', 160, 'insulating'],
    ['reinforced-concrete', 200, 'bearing', 'airtight'],
    ['gypsum-plaster', 10, 'finish'],
  ],
  cover_mm: 35,
  lining_mm: 20,
  position_mm: 0,
}

/** Two leaves with an insulated cavity, closed at the reveal. */
export const cavityWall: WallPlan = {
  id: 'cavity-wall',
  name: words('Cavity wall with facing leaf', 'Zweischalig mit Verblendschale'),
  layers: [
    ['clinker-2000', 115, 'rain', 'finish'],
    ['air-still', 20],
    ['mineral-wool', 140, 'insulating'],
    ['calcium-silicate-1800', 175, 'bearing'],
    ['gypsum-plaster', 15, 'airtight', 'finish'],
  ],
  edges: { 'air-still': ['xps', 40], 'mineral-wool': ['xps', 40] },
  cover_mm: 35,
  lining_mm: 20,
  position_mm: -20,
}

/** Brick insulated on the room side, with a board in the reveal. */
export const insideInsulated: WallPlan = {
  id: 'inside-insulated',
  name: words('Brick with inside insulation', 'Ziegel mit Innendämmung'),
  layers: [
    ['clay-brick-1800', 365, 'bearing', 'rain'],
    ['wood-fibre', 80, 'insulating'],
    ['gypsum-plaster', 15, 'airtight', 'finish'],
  ],
  board: ['wood-fibre', 10],
  cover_mm: 0,
  lining_mm: 10,
  position_mm: 160,
}

/** Timber frame with wood fibre outside and a boarded inside. */
export const timberFrame: WallPlan = {
  id: 'timber-frame',
  name: words('Timber frame', 'Holzrahmenbau'),
  layers: [
    ['lime-cement-render', 8, 'rain', 'finish'],
    ['wood-fibre', 60, 'insulating'],
    ['mineral-wool', 160, 'bearing', 'insulating'],
    ['osb', 15, 'airtight'],
    ['gypsum-board', 12.5, 'finish'],
  ],
  edges: { 'mineral-wool': ['softwood', 60] },
  cover_mm: 35,
  lining_mm: 20,
  position_mm: 0,
}

/** Concrete with insulation behind a ventilated cladding of boards. */
export const cladConcrete: WallPlan = {
  id: 'clad-concrete',
  name: words('Concrete with ventilated cladding', 'Beton mit hinterlüfteter Bekleidung'),
  layers: [
    ['softwood', 24, 'rain', 'finish'],
    ['air-ventilated', 40],
    ['mineral-wool', 180, 'insulating'],
    ['reinforced-concrete', 200, 'bearing', 'airtight'],
    ['gypsum-plaster', 10, 'finish'],
  ],
  cover_mm: 30,
  lining_mm: 20,
  position_mm: 0,
}
