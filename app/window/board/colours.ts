import type { Pen } from '../../../core/drawing'
import { onDark } from './dark'

/** The colours of the board, out of the tokens of the theme in use. */
export type Colours = {
  readonly pen: (pen: Pen, onPaper: string) => string
  readonly fill: (use: 'tint' | 'solid' | 'clear' | 'mark', onPaper: string) => string
  readonly letters: string
}

const ofPen: { readonly [P in Pen]?: string } = {
  cut: '--cut',
  'cut-small': '--cut',
  seen: '--seen',
  hidden: '--seen',
  axis: '--seen',
  break: '--seen',
  hatch: '--hatch',
  size: '--seen',
  stroke: '--ink',
  leader: '--ink2',
  text: '--ink',
  'membrane-inner': '--pl-inner',
  'membrane-outer': '--pl-outer',
}

/** Reads the tokens once; a change of theme makes new colours. */
export const coloursOf = (page: Document, isDark: boolean): Colours => {
  const style = getComputedStyle(page.documentElement)
  const token = (name: string): string => style.getPropertyValue(name).trim()
  const pens = new Map(Object.entries(ofPen).map(([pen, name]) => [pen, token(name)]))
  const ground = token('--paper')
  const letters = token('--ink')
  return {
    // A line in the colour of the paper parts others from what lies below.
    pen: (pen, onPaper) => (onPaper === '#FFFFFF' ? ground : (pens.get(pen) ?? (isDark ? letters : onPaper))),
    fill: (use, onPaper) => {
      if (use === 'clear') return ground
      if (use === 'mark') return isDark ? letters : onPaper
      return isDark ? onDark(onPaper) : onPaper
    },
    letters,
  }
}
