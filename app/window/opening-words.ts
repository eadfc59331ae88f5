import { words } from '../../core/words'

/** What the window says of an opening as a whole: its name, what stands round it, the photos of it. */
export const openingWords = {
  openingName: words('Name of the opening', 'Name der Öffnung'),
  jointName: words('Name of the joint', 'Name der Fuge'),
  frameName: words('Name of the frame', 'Name des Rahmens'),
  tooLong: words('At most {0} characters: {1} too many', 'Höchstens {0} Zeichen: {1} zu viel'),

  groupRound: words('Round the opening', 'Rings um die Öffnung'),
  roundCounts: words('{0} blocks, {1} fixings', '{0} Klötze, {1} Befestigungen'),
  roundNone: words('nothing placed', 'nichts gesetzt'),
  fromLeft: words('{0} mm, from the left end', '{0} mm, ab linkem Ende'),
  fromBelow: words('{0} mm, from the lower end', '{0} mm, ab unterem Ende'),
  addAt: words('Add to: {0}', 'Einfügen: {0}'),
  goTo: words('{0}: show its values', '{0}: Werte zeigen'),
  placeOf: words('{0}, place on the {1}', '{0}, Stelle: {1}'),
  nothingOnSide: words('nothing placed on this side', 'an dieser Seite nichts gesetzt'),
  notPlaced: words('count not stated', 'Zahl nicht genannt'),
  wallOfOpening: words('Wall of this opening', 'Wand dieser Öffnung'),

  yearOutside: words('Year outside', 'Jahr außen'),

  groupPhotos: words('Photos of the site', 'Fotos vom Bau'),
  photosPinned: words('{0} pinned', '{0} angeheftet'),
  photosNone: words('none', 'keine'),
  pinPhotos: words('Pin photos …', 'Fotos anheften …'),
  pinned: words('Pin a photo', 'Foto anheften'),
  photosHint: words(
    'JPEG or PNG. One takes at most {0} MB in the file: larger ones are made smaller. All together at most {1} MB; {2} MB are used. Photos may also be dropped on the window.',
    'JPEG oder PNG. Eines belegt höchstens {0} MB der Datei: größere werden verkleinert. Alle zusammen höchstens {1} MB; {2} MB sind belegt. Fotos lassen sich auch auf das Fenster ziehen.',
  ),
  photoSmaller: words(
    '{0} made smaller for the file: {1} MB are now {2} MB.',
    '{0} für die Datei verkleinert: aus {1} MB wurden {2} MB.',
  ),
  noPhoto: words(
    '{0} is not pinned: it is no photo that can be read. JPEG and PNG can.',
    '{0} ist nicht angeheftet: das ist kein lesbares Foto. JPEG und PNG sind es.',
  ),
  notPinned: words('No photo is pinned: {0}', 'Kein Foto ist angeheftet: {0}'),
  whatItShows: words('What the photo shows', 'Was das Foto zeigt'),
  note: words('note', 'Notiz'),
  sideOfPhoto: words('Side: {0}', 'Seite: {0}'),
  wholeOpeningShort: words('whole opening', 'ganze Öffnung'),
  photoAt: words('at', 'bei'),
  photoAtHint: words(
    'along the side, from its left or lower end',
    'an der Seite entlang, ab linkem oder unterem Ende',
  ),
  dayTaken: words('Day it was taken', 'Aufnahmetag'),
  lookAtPhoto: words('Look at the photo: {0}', 'Foto ansehen: {0}'),
  removePhoto: words('Take the photo off', 'Foto entfernen'),
  tellPhoto: words('What is told of the photo', 'Angaben zum Foto'),
  photoMissing: words('not in the file', 'nicht in der Datei'),
  photo: words('Photo', 'Foto'),
  photoNumber: words('Photo {0}', 'Foto {0}'),

  waitedFor: words('{0} asked for', '{0} gefragt'),
  waitedForWhy: words(
    '{0} values that a verdict waits for are not told yet',
    '{0} Angaben fehlen noch, auf die ein Befund wartet',
  ),
  waitedForOne: words(
    'One value that a verdict waits for is not told yet',
    'Eine Angabe fehlt noch, auf die ein Befund wartet',
  ),
  amongFields: words('Show among the fields', 'In den Feldern zeigen'),
} as const
