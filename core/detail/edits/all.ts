import type { EditKinds } from '../edit'
import { choosePractice, chooseProfile, chooseWall } from './choose'
import { confirm } from './confirm'
import { insert, move, remove } from './layers'
import { entitle, issue } from './issue'
import { fill, replace } from './seals'
import { state } from './state'
import { chooseJoint, joinZones, measureOffset, splitZone } from './zones'

/** Every kind of edit. A kind without its file does not compile. */
export const editKinds: EditKinds = {
  state,
  confirm,
  fill,
  replace,
  insert,
  remove,
  move,
  'split-zone': splitZone,
  'join-zones': joinZones,
  'choose-joint': chooseJoint,
  'measure-offset': measureOffset,
  entitle,
  issue,
  'choose-practice': choosePractice,
  'choose-profile': chooseProfile,
  'choose-wall': chooseWall,
}
