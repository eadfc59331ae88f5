import { practices } from '../../../core/practice'
import type { Language } from '../../../core/words'

export const themes = ['system', 'light', 'dark'] as const
export type Theme = (typeof themes)[number]

/** What the user likes of the window. It is remembered by the browser or the desktop program, never in a project file. */
export type Liking = {
  theme: Theme
  language: Language
  /** what the wheel does; with Ctrl held always zoom */
  wheel: 'zoom' | 'pan'
  snap: boolean
  sizes: boolean
  numbers: boolean
  /** widths of the columns in rem; nothing: as usual at this size of the window */
  left?: number | undefined
  right?: number | undefined
  /** how much of the right column the fields take, in percent; nothing: as much as they need, up to half */
  fields?: number | undefined
  /** the practice that a new joint begins with */
  practice: string
}

/** How far the columns can be drawn, in rem: 208 to 400 px and 320 to 480 px at usual text. */
export const columns = { left: { min: 13, max: 25 }, right: { min: 20, max: 30 } } as const

/** How far the line between fields and verdicts can be drawn, in percent of their column. */
export const fieldsShare = { min: 20, max: 92 } as const

export type Settings = Liking & {
  /** the colours in use: the theme, or what the system asks for */
  readonly isDark: boolean
}

const place = 'jambwright.liking'

/** The settings, remembered as they change. Something unreadable in their place counts as nothing. */
export const newSettings = (page: Window): Settings => {
  const liking: Liking = $state({ ...usual(page), ...remembered(page) })
  const wish = page.matchMedia('(prefers-color-scheme: dark)')
  let systemIsDark = $state(wish.matches)
  wish.addEventListener('change', () => (systemIsDark = wish.matches))
  const isDark = $derived(liking.theme === 'dark' || (liking.theme === 'system' && systemIsDark))
  // Before anything is painted: the board reads its colours from the theme in use.
  $effect.pre(() => {
    page.document.documentElement.dataset['theme'] = isDark ? 'dark' : 'light'
    page.document.documentElement.lang = liking.language
    page.localStorage.setItem(place, JSON.stringify(liking))
  })
  return {
    get theme() {
      return liking.theme
    },
    set theme(to) {
      liking.theme = to
    },
    get language() {
      return liking.language
    },
    set language(to) {
      liking.language = to
    },
    get wheel() {
      return liking.wheel
    },
    set wheel(to) {
      liking.wheel = to
    },
    get snap() {
      return liking.snap
    },
    set snap(to) {
      liking.snap = to
    },
    get sizes() {
      return liking.sizes
    },
    set sizes(to) {
      liking.sizes = to
    },
    get numbers() {
      return liking.numbers
    },
    set numbers(to) {
      liking.numbers = to
    },
    get left() {
      return liking.left
    },
    set left(to) {
      liking.left = to
    },
    get right() {
      return liking.right
    },
    set right(to) {
      liking.right = to
    },
    get fields() {
      return liking.fields
    },
    set fields(to) {
      liking.fields = to
    },
    get practice() {
      return liking.practice
    },
    set practice(to) {
      liking.practice = to
    },
    get isDark() {
      return isDark
    },
  }
}

const usual = (page: Window): Liking => ({
  theme: 'system',
  language: page.navigator.language.startsWith('de') ? 'de' : 'en',
  wheel: 'zoom',
  snap: true,
  sizes: true,
  numbers: false,
  practice: practices[0]?.id ?? '',
})

const remembered = (page: Window): Partial<Liking> => {
  try {
    const found: unknown = JSON.parse(page.localStorage.getItem(place) ?? '{}')
    return typeof found === 'object' && found !== null ? sound(found) : {}
  } catch {
    return {}
  }
}

/** Of what was remembered, what has the right form. */
const sound = (found: object): Partial<Liking> => {
  // Each member is looked at before it is used.
  const it = found as Partial<Record<keyof Liking, unknown>>
  const theme = themes.find(one => one === it.theme)
  return {
    ...(theme && { theme }),
    ...((it.language === 'en' || it.language === 'de') && { language: it.language }),
    ...((it.wheel === 'zoom' || it.wheel === 'pan') && { wheel: it.wheel }),
    ...(typeof it.snap === 'boolean' && { snap: it.snap }),
    ...(typeof it.sizes === 'boolean' && { sizes: it.sizes }),
    ...(typeof it.numbers === 'boolean' && { numbers: it.numbers }),
    ...(isWithin(it.left, columns.left) && { left: it.left }),
    ...(isWithin(it.right, columns.right) && { right: it.right }),
    ...(isWithin(it.fields, fieldsShare) && { fields: it.fields }),
    ...(practices.some(known => known.id === it.practice) && { practice: String(it.practice) }),
  }
}

const isWithin = (it: unknown, { min, max }: { readonly min: number; readonly max: number }): it is number =>
  typeof it === 'number' && min <= it && it <= max
