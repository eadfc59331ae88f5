import { type Problem } from '../../units'
import { filled, type Words, words } from '../../words'
import type { Opening } from '../model'
import { mostListed, type PartLists } from '../opening-parts'

const names: Readonly<Record<keyof PartLists, Words>> = {
  fixings: words('kinds of fixing', 'Arten von Befestigungen'),
  blocks: words('blocks', 'Klötze'),
  mullions: words('mullions', 'Pfosten'),
  transoms: words('transoms', 'Kämpfer'),
  photos: words('photos', 'Fotos'),
}

/** What is to be said of an opening that has more of something than a file holds. */
export const overfull = (opening: Opening): Problem | undefined => {
  // The keys of the table are the lists; Object.keys forgets it.
  const lists = Object.keys(mostListed) as readonly (keyof PartLists)[]
  const over = lists.find(it => (opening[it] ?? []).length > mostListed[it])
  return over && { at: opening.id, say: filled(atMost, `${mostListed[over]}`, names[over]) }
}

const atMost = words('an opening has at most {0} {1}', 'eine Öffnung hat höchstens {0} {1}')
