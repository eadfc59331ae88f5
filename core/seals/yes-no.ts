import { words } from '../words'
import type { Choice } from './seal-kind'

/** What may be stated of something that either is so or is not. */
export const yesNo: readonly [Choice, Choice] = [
  { value: 'yes', name: words('yes', 'ja') },
  { value: 'no', name: words('no', 'nein') },
]
