import { words } from '../../core/words'

/** What the window says of where work begins, of files and copies, of print, and of the program itself. */
export const fileWords = {
  newJoint: words('New joint', 'Neue Fuge'),
  newJointMenu: words('New joint …', 'Neue Fuge …'),
  chooseWall: words(
    'Choose the wall. Outside is at the left; U in W/m²K.',
    'Wand wählen. Außen ist links; U in W/m²K.',
  ),
  goOn: words('Go on with', 'Weiter mit'),
  noRecents: words(
    'Files that you open or save are listed here.',
    'Hier stehen die Dateien, die Sie öffnen oder sichern.',
  ),
  clearList: words('Clear this list', 'Liste leeren'),
  notFound: words('file not found', 'Datei nicht gefunden'),
  removeFromList: words('Remove {0} from this list', '{0} aus der Liste nehmen'),
  remove: words('remove', 'entfernen'),
  fromCrash: words('Kept from a crash', 'Nach Absturz bewahrt'),
  newerThanFile: words('newer than its file', 'neuer als die Datei'),
  neverSaved: words('in no file yet', 'noch in keiner Datei'),
  lookAt: words('Look', 'Ansehen'),
  letGo: words('Let go', 'Verwerfen'),
  rightBesideWrong: words('right beside wrong, made to be broken', 'richtig neben falsch, zum Ausprobieren'),
  wholeOpenings: words('Whole openings', 'Ganze Öffnungen'),
  wholeOpeningsSay: words('to look at and to change', 'zum Ansehen und Ändern'),
  bringIn: words('Bring in', 'Hereinholen'),
  sheetWithModel: words('A sheet that carries its model', 'Ein Blatt, das sein Modell trägt'),
  orDrop: words(
    'Or drop a file anywhere in this window.',
    'Oder eine Datei irgendwo in dieses Fenster ziehen.',
  ),
  noNetwork: words(
    'Works without a network. Nothing leaves this computer.',
    'Arbeitet ohne Netz. Nichts verlässt diesen Rechner.',
  ),
  allMet: words('all met', 'alle erfüllt'),
  today: words('today {0}', 'heute {0}'),
  yesterday: words('yesterday', 'gestern'),
  usualPlace: words('the frame at its usual place', 'der Rahmen an seinem üblichen Ort'),
  toStart: words('To the start', 'Zum Start'),

  copyAt: words('copy {0}', 'Kopie {0}'),
  copyWhy: words(
    'A copy for a crash was written and read back at {0}.',
    'Eine Kopie für den Absturz wurde um {0} geschrieben und zurückgelesen.',
  ),
  elsewhereTitle: words('Changed elsewhere as well', 'Auch anderswo geändert'),
  elsewhereText: words(
    'Somebody has changed {0} since you opened it, and you have changed it here. Whichever you keep in its place, the other is not thrown away: what is replaced stays beside it as {0}.previous.',
    '{0} wurde anderswo geändert, seit Sie sie geöffnet haben, und auch hier. Was ersetzt wird, bleibt daneben als {0}.previous liegen.',
  ),
  elsewhereTextBrowser: words(
    'Somebody has changed {0} since you opened it, and you have changed it here.',
    '{0} wurde anderswo geändert, seit Sie sie geöffnet haben, und auch hier.',
  ),
  keepMine: words('Save mine over it', 'Meine darüber sichern'),
  takeTheirs: words('Drop mine, read the file', 'Meine verwerfen, Datei lesen'),
  keepBoth: words('Save mine elsewhere …', 'Meine anderswo sichern …'),

  print: words('Print the sheet …', 'Blatt drucken …'),
  nothingToPrint: words('There is no sheet to print.', 'Es gibt kein Blatt zu drucken.'),
  aboutTitle: words('About Jambwright', 'Über Jambwright'),
  aboutMenu: words('About and keys', 'Über und Tasten'),
  version: words('Version {0}', 'Version {0}'),
  caution: words(
    'Jambwright helps to plan and to argue. It proves nothing that local code and licensed practice must prove, and says refer where they must. Guarding, anchoring, lifting, fire and hazardous materials are never certified here.',
    'Jambwright hilft beim Planen und Begründen. Es weist nichts nach, was örtliche Vorschrift und befugte Fachleute nachweisen müssen, und sagt dort: Nachweis. Absturzsicherung, Verankerung, Heben, Brand und Schadstoffe werden hier nie bescheinigt.',
  ),
  updates: words(
    'It never asks a network for anything, also not for a newer version of itself.',
    'Es fragt nie ein Netz, auch nicht nach einer neueren Fassung seiner selbst.',
  ),
  keys: words('Keys', 'Tasten'),
  withoutGraphics: words('Started without the graphics card.', 'Ohne Grafikkarte gestartet.'),
  restartSafe: words('Restart without graphics card', 'Ohne Grafikkarte neu starten'),
  restartUsual: words('Restart with graphics card', 'Mit Grafikkarte neu starten'),

  workWillBe: words(
    'The steps of the work in their order, with holds across the line; the picked step drawn as it looks then; the record for the next hold; the take-off by plane.',
    'Die Schritte der Ausführung in ihrer Folge, mit Haltepunkten quer über die Linie; der gewählte Schritt, gezeichnet wie er dann aussieht; das Protokoll für den nächsten Haltepunkt; der Massenauszug nach Ebenen.',
  ),
  teachWillBe: words(
    'Full screen: three large switches for the seals, what fails first without one, where air and dew then go, and the build-up as steps.',
    'Ganzer Schirm: drei große Schalter für die Dichtungen, was ohne eine zuerst versagt, wohin Luft und Tauwasser dann gehen, und der Aufbau in Schritten.',
  ),
  notThereYet: words('Not there yet', 'Noch nicht da'),
  untilThen: words('Until then', 'Bis dahin'),
  sheetUntilThen: words(
    'the sheet carries parts, sizes and verdicts to the site.',
    'bringt das Blatt Teile, Maße und Befunde auf die Baustelle.',
  ),
  samplesUntilThen: words(
    'the samples show right beside wrong.',
    'zeigen die Beispiele richtig neben falsch.',
  ),
  fieldsShare: words('Height of the fields', 'Höhe der Eingaben'),
  leftColumn: words('Width of the left column', 'Breite der linken Spalte'),
  rightColumn: words('Width of the right column', 'Breite der rechten Spalte'),
  dragOrArrows: words(
    '{0}: drag, or arrow keys; double click: as usual',
    '{0}: ziehen oder Pfeiltasten; Doppelklick: wie üblich',
  ),
} as const
