import { copiesUnder } from '../../app/main/copies'
import { handleMessages } from '../../app/main/handlers'
import { keepIn } from '../../app/main/keep'
import { newPlaces } from '../../app/main/places'
import { newRecents } from '../../app/main/recents'

type Desk = Parameters<typeof handleMessages>[0]

/** The handlers of the desktop program over a folder of user data, with whatever else a test wants to hear. */
export const aDesk = (userData: string, its: Partial<Desk> = {}): Desk => {
  const places = newPlaces()
  const desk: Desk = {
    places,
    recents: newRecents(keepIn(userData), places, () => undefined),
    copies: copiesUnder(userData, places),
    window: () => undefined,
    language: () => 'en',
    about: () => ({ version: '1.2.3', isSafe: false }),
    restart: () => undefined,
    setLanguage: () => undefined,
    setUnsaved: () => undefined,
    closeAnswered: () => undefined,
    ready: () => undefined,
    ...its,
  }
  handleMessages(desk)
  return desk
}
