import type { Project } from '../model'

/** The heading of a sample: an invented office, place and house. */
export const title = (number: string, note: string): Project['title'] => ({
  name: 'Weir House',
  office: 'Drawing Office Nine',
  author: '',
  place: 'Tellmark',
  number,
  note,
})
