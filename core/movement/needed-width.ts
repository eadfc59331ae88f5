import type { MovementBasis } from '../practice'
import { words } from '../words'
import type { Term } from './term'

/** How far a joint opens and closes from its installed width, both positive. */
export type Movement = { readonly opens_mm: number; readonly closes_mm: number }

/**
 * Width that a sealant joint needs for its movement, by what the practice means with the movement share:
 * all movement over the share (total), the larger way over the share (plus-minus), or all movement over the share
 * of the smallest width that it ever has. Compared with the narrowest still width.
 */
export const neededWidth_mm = ({ opens_mm, closes_mm }: Movement, share_pct: number, basis: MovementBasis) =>
  needed[basis](opens_mm, closes_mm, share_pct / 100)

const needed: Readonly<Record<MovementBasis, (opens: number, closes: number, share: number) => number>> = {
  total: (opens, closes, share) => (opens + closes) / share,
  'plus-minus': (opens, closes, share) => Math.max(opens, closes) / share,
  'share-of-smallest': (opens, closes, share) => (opens + closes) / share + closes,
}

/** The same as a sum. */
export const neededWidthSum = (
  { opens_mm, closes_mm }: Movement,
  share_pct: number,
  basis: MovementBasis,
): readonly Term[] => [
  ...(basis === 'plus-minus'
    ? [
        {
          ...movementTerm,
          value: Math.max(opens_mm, closes_mm),
          says: words('the larger movement', 'die größere Bewegung'),
        },
      ]
    : [
        {
          ...movementTerm,
          value: opens_mm + closes_mm,
          says: words('movement, opening and closing', 'Bewegung, öffnend und schließend'),
        },
      ]),
  {
    sign: '÷',
    value: share_pct,
    unit: 'pct',
    says: words('movement share of the sealant', 'zulässige Bewegung des Dichtstoffs'),
  },
  ...(basis === 'share-of-smallest'
    ? [
        {
          sign: '+',
          value: closes_mm,
          unit: 'mm',
          says: words('closing movement', 'schließende Bewegung'),
        } as const,
      ]
    : []),
  {
    sign: '=',
    value: neededWidth_mm({ opens_mm, closes_mm }, share_pct, basis),
    unit: 'mm',
    says: words('needed width', 'nötige Breite'),
  },
]

const movementTerm = { sign: '', unit: 'mm' } as const
