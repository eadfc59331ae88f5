import type { EditKinds } from '../edit'
import { choosePractice, chooseProfile, chooseWall } from './choose'
import { confirm } from './confirm'
import { duplicate } from './duplicate'
import { insert, move, remove } from './layers'
import { add, placeFixings, spaceFixings } from './opening-parts'
import { dropLimit, ownLimit } from './own-limits'
import { paste } from './paste'
import { pinPhoto, tellPhoto } from './photos'
import { rename } from './rename'
import { putBack, takeOut } from './taken-out'
import { entitle, issue } from './issue'
import { exchange, fill, replace } from './seals'
import { state } from './state'
import { chooseJoint, joinZones, measureOffset, splitZone } from './zones'

/** Every kind of edit. A kind without its file does not compile. */
export const editKinds: EditKinds = {
  state,
  confirm,
  fill,
  replace,
  exchange,
  'take-out': takeOut,
  'put-back': putBack,
  rename,
  paste,
  duplicate,
  add,
  'place-fixings': placeFixings,
  'space-fixings': spaceFixings,
  'pin-photo': pinPhoto,
  'tell-photo': tellPhoto,
  insert,
  remove,
  move,
  'split-zone': splitZone,
  'join-zones': joinZones,
  'choose-joint': chooseJoint,
  'measure-offset': measureOffset,
  entitle,
  issue,
  'own-limit': ownLimit,
  'drop-limit': dropLimit,
  'choose-practice': choosePractice,
  'choose-profile': chooseProfile,
  'choose-wall': chooseWall,
}
