import { filled, type Language } from '../../../core/words'
import { say as words } from '../window-words'

const day_ms = 24 * 3600 * 1000

/** When something was: today with its time, yesterday, else the date. */
export const writtenTime = (at: Date, language: Language, now = new Date()): string => {
  const midnight = new Date(now)
  midnight.setHours(0, 0, 0, 0)
  const time = at.toLocaleTimeString(language, { hour: '2-digit', minute: '2-digit' })
  if (at >= midnight) return filled(words.today, time)[language]
  if (at.getTime() >= midnight.getTime() - day_ms) return words.yesterday[language]
  return at.toLocaleDateString(language, { day: 'numeric', month: 'short', year: 'numeric' })
}
