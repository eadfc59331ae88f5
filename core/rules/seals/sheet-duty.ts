import { words } from '../../words'
import { hasValue, sealsRound } from '../readings/seals'
import { toldWord } from '../readings/told'
import { wordRule } from '../told-rules'

/** A façade membrane at floor level is no waterproofing of the building. */
export const sheetDuty = wordRule({
  id: 'sheet-duty',
  word: toldWord('opening.water', 'water'),
  title: words('Sheet at floor level as waterproofing', 'Bahn am Fußpunkt als Abdichtung'),
  says: words(
    'A façade sheet keeps out moisture of the ground, not water under pressure, and it does not seal roofs or balconies.',
    'Eine Fassadenbahn hält Bodenfeuchte ab, kein drückendes Wasser, und dichtet weder Dach noch Balkon.',
  ),
  why: words(
    'It is bonded to the frame for wind and rain; standing water finds its laps.',
    'Sie ist für Wind und Regen am Rahmen verklebt; stehendes Wasser findet ihre Stöße.',
  ),
  cure: words('Have the waterproofing brought up to the frame', 'Bauwerksabdichtung bis an den Rahmen führen lassen'),
  applies: at =>
    sealsRound(at).some(it => hasValue(it, 'sheet.sd')) ||
    words('no sheet lies at floor level', 'am Fußpunkt liegt keine Bahn'),
  examples: [
    [words('against moisture of the ground', 'gegen Bodenfeuchte'), 'DE', 'moisture', 'met'],
    [words('on a balcony', 'auf einem Balkon'), 'AT', 'roof', 'not-met'],
  ],
}) // prettier-ignore
