import { words } from '../../words'
import { toldWord } from '../readings/told'
import { wordRule } from '../told-rules'

/** What is taken out is looked at for hazardous materials before anybody touches it. */
export const screening = wordRule({
  id: 'screening',
  word: toldWord('opening.screening', 'screening'),
  title: words('Hazardous materials in what is taken out', 'Schadstoffe im Ausbau'),
  says: words(
    'Old putty, paint, sealants and panels are screened for asbestos, lead, PCB and tar before work.',
    'Alter Kitt, Anstrich, Dichtstoff und Platten sind vor der Arbeit auf Asbest, Blei, PCB und Teer untersucht.',
  ),
  why: words(
    'Dust of it makes ill years later, the fitter first.',
    'Sein Staub macht nach Jahren krank, zuerst die Monteure.',
  ),
  cure: words('Stop and have it tested', 'Anhalten und untersuchen lassen'),
  applies: ({ opening }) =>
    opening.told?.screening?.value !== 'new' || words('nothing old is taken out', 'nichts Altes wird ausgebaut'),
  caution: word =>
    word === 'not'
      ? {
          to: words('a laboratory, and a firm licensed for such work', 'ein Labor und einen dafür zugelassenen Betrieb'),
          handOver: [words('samples of putty, paint and sealant', 'Proben von Kitt, Anstrich und Dichtstoff')],
        }
      : undefined,
  examples: [
    [words('screened', 'untersucht'), 'DE', 'screened', 'met'],
    [words('putty and paint not tested', 'Kitt und Anstrich nicht untersucht'), 'DE', 'not', 'refer'],
  ],
}) // prettier-ignore
