import type { FillUse, Pen } from '../../../core/drawing'
import { heatOnDark, onDark } from './dark'

/** The colours of the board, out of the tokens of the theme in use. */
export type Colours = {
  readonly pen: (pen: Pen, onPaper: string) => string
  readonly fill: (use: FillUse, onPaper: string) => string
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
  curve: '--acc',
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
      if (use === 'heat') return isDark ? heatOnDark(onPaper) : onPaper
      if (use === 'mark') return isDark ? letters : onPaper
      return isDark ? onDark(onPaper) : onPaper
    },
    letters,
  }
}

/** The colours of outlines over a temperature field: it stands in the place of tints and hatches, which stay to be taken hold of. */
export const overHeat = (colours: Colours): Colours => ({
  ...colours,
  pen: (pen, onPaper) => (pen === 'hatch' || pen === 'light' ? 'transparent' : colours.pen(pen, onPaper)),
  fill: (use, onPaper) => (use === 'tint' || use === 'solid' ? 'transparent' : colours.fill(use, onPaper)),
})
