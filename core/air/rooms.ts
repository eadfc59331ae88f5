import { type Citation, cite } from '../sources'
import { type Words, words } from '../words'

/** What a room is used for, as far as its air is concerned. */
export const roomUses = ['dwelling', 'office', 'hall', 'wet', 'store'] as const
export type RoomUse = (typeof roomUses)[number]

/** Humidity classes of EN ISO 13788: how much more vapour the room holds than the air outside. */
export const humidityClasses = ['1', '2', '3', '4', '5'] as const
export type HumidityClass = (typeof humidityClasses)[number]

export const roomUseName: Readonly<Record<RoomUse, Words>> = {
  dwelling: words('dwelling and alike', 'Wohnraum und ähnlich genutzt'),
  office: words('office, shop', 'Büro, Laden'),
  hall: words('sports hall, kitchen, canteen', 'Sporthalle, Küche, Kantine'),
  wet: words('laundry, brewery, swimming pool', 'Wäscherei, Brauerei, Schwimmbad'),
  store: words('store, unoccupied', 'Lager, unbewohnt'),
}

export const humidityClassName: Readonly<Record<HumidityClass, Words>> = {
  '1': words('1, very low: stores', '1, sehr gering: Lager'),
  '2': words('2, low: offices, shops', '2, gering: Büros, Läden'),
  '3': words('3, medium: dwellings with few people', '3, mittel: Wohnungen mit geringer Belegung'),
  '4': words(
    '4, high: dwellings with many people, sports halls, kitchens',
    '4, hoch: Wohnungen mit hoher Belegung, Sporthallen, Küchen',
  ),
  '5': words('5, very high: laundries, breweries, pools', '5, sehr hoch: Wäschereien, Brauereien, Bäder'),
}

/** The air of a room by its use, where nothing else is stated. */
export type RoomAir = {
  readonly inside_C: number
  /** relative humidity that a standard sets for it; absent: it follows from the humidity class */
  readonly inside_pct?: number
  readonly humidityClass: HumidityClass
  readonly cite: Citation
}

/** Which class a use belongs to is from memory (EN ISO 13788, annex on indoor conditions). */
export const roomAir: Readonly<Record<RoomUse, RoomAir>> = {
  dwelling: {
    inside_C: 20,
    inside_pct: 50,
    humidityClass: '3',
    cite: cite('din-4108-2', 'published', '20 °C, 50 %'),
  },
  office: { inside_C: 20, humidityClass: '2', cite: cite('en-iso-13788', 'memory') },
  hall: { inside_C: 20, humidityClass: '4', cite: cite('en-iso-13788', 'memory') },
  // Warm wet rooms run from 20 to 30 °C: ours, to be stated.
  wet: { inside_C: 24, humidityClass: '5', cite: cite('convention', 'ours') },
  store: { inside_C: 20, humidityClass: '1', cite: cite('en-iso-13788', 'memory') },
}

/** Vapour pressure above that outside, Pa: upper limits of the classes up to 0 °C outside (EN ISO 13788, from memory). */
const excess_Pa: Readonly<Record<HumidityClass, number>> = {
  '1': 270,
  '2': 540,
  '3': 810,
  '4': 1080,
  '5': 1360,
}

/** How much more vapour than outside a room of a class holds: full up to 0 °C outside, falling straight to nothing at 20 °C. */
export const vapourExcess_Pa = (of: HumidityClass, outside_C: number): number =>
  excess_Pa[of] * Math.min(1, Math.max(0, 1 - outside_C / 20))
