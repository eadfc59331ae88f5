export { bearingIndex, layerDepths, wallDepths } from './depths'
export type { Placed, WallDepths } from './depths'
export { air, conditionsOf, winterValues } from './conditions'
export type { Air, Conditions, MonthAir } from './conditions'
export { site } from './fields/site'
export type { Edit, EditKind, EditKinds, EditOf, Edits } from './edit'
export { addedParts, titleTexts } from './edit'
export type { AddedPart, TitleText } from './edit'
export { editKinds } from './edits/all'
export { applyEdit, applyEdits } from './edits/apply'
export { materialOf } from './edits/materials'
export type { Field, FieldAt, Known, Origin, PartKind, Readable } from './field'
export type { ChoiceField, Word } from './choice-field'
export { fields } from './fields/all'
export { choiceOf, choices, choicesOf, knownChoice } from './fields/choices'
export { fieldOf, fieldsOf, known, partKindOf } from './fields/field-of'
export {
  fixingOf,
  frameOf,
  jointOf,
  layerOf,
  openingOf,
  openingsWith,
  profileOf,
  sealOf,
  takenOutOf,
  wallOf,
  zoneOf,
  zonesOf,
} from './find'
export type { ZonePlace } from './find'
export { exposures } from './asked'
export { couplings } from './box'
export type { Box, Coupling } from './box'
export { longestPhotoNote } from './edits/photos'
export { mostPhoto_bytes, mostPhotos_bytes, photoProblem } from './file/photos'
export type { PhotoTold, PinnedPhoto } from './photo'
export type { Asked, Exposure } from './asked'
export { hasChannel, thresholdLevels, thresholdPieceId, thresholdPieces } from './threshold'
export type { Laid, Threshold, ThresholdLevels, ThresholdPiece } from './threshold'
export { toldAmounts, toldWords } from './told'
export type { Told } from './told'
export { fixingKindName, fixingKinds, plateOf_mm } from './fixing'
export type { Block, Fixing, FixingKind, Mullion } from './fixing'
export { secondPlanes } from './sill'
export type { SecondPlane, Sill } from './sill'
export { diagonals, heightPlaces, widthPlaces } from './survey'
export type { MeasuredGap, Offset, Survey } from './survey'
export type {
  FormatTag,
  Frame,
  Joint,
  Layer,
  Opening,
  Project,
  Reveal,
  Room,
  Site,
  Wall,
  Zone,
} from './model'
export { issueStates } from './issue'
export { designDigest, issueStanding, lastRevision } from './issue-standing'
export type { IssueState, Revision } from './issue'
export { partsOf } from './parts'
export { partIds } from './part-ids'
export { listedPart, memberOf, offsetId, sideEnd_mm, singlePart } from './opening-parts'
export { emptyBays, membersAt, neededIn, placedAt, sideFixings, sideLength_mm } from './positions'
export type { FrameBay, SideFixings } from './positions'
export type { Part } from './parts'
export { addedPartName, blockName, boardName } from './part-names'
export { profiles } from './profiles/all'
export type { Body, Member, Profile } from './profiles/profile'
export { samples } from './samples/all'
export type { Sample } from './samples/all'
export { isClip, readClip, writeClip } from './file/clip'
export { longestName } from './edits/rename'
export { pieceOf } from './piece'
export type { Piece } from './piece'
export { fromBase64, sizeOf_bytes } from './file/base64'
export { formatVersion, openProject, refusedBy } from './file/open'
export type { Opened } from './file/open'
export { digestOf, extension, saveProject } from './file/save'
export { sideNameAt } from './side-name'
export { rebateWidth_mm, standsAt } from './stands-at'
export { outOfSquare, sizesOf } from './sizes'
export type { OutOfSquare, Size, Sizes } from './sizes'
export { beginWith } from './starters/begin-with'
export { starters } from './starters/all'
export { wallFrom } from './starters/wall-plan'
export type { WallPlan } from './starters/wall-plan'
export { besideOf, previousOf, saveSafely } from './file/save-safely'
export type { Disk } from './file/save-safely'
export { afterOutsideChange, contentDigest } from './file/elsewhere'
export { readRecents, recentAbout, recentLength, withoutRecent, withRecent } from './file/recent'
export type { Recent, RecentAbout } from './file/recent'
export { copiesIn, copyAfter, generations, keepCopy, daysKept, letGoOf } from './file/recovery'
export type { Copy, Shelf } from './file/recovery'
export { textOf } from './file/utf-8'
