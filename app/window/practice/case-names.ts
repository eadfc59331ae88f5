import { roomUseName } from '../../../core/air'
import { fixingKindName } from '../../../core/detail'
import { anchorBaseName, frameMaterialName, planeName, revealFormName } from '../../../core/kinds'
import { same, type Words, words } from '../../../core/words'

type Names = Readonly<Record<string, Words>>

const yesOrNo: Names = { yes: words('yes', 'ja'), no: words('no', 'nein') }

/** What a case of a limit depends on: the key of its row, and the words that it may have. Keys without words are amounts. */
const cases: Readonly<Record<string, { readonly name: Words; readonly values?: Names }>> = {
  frame: { name: words('frame', 'Rahmen'), values: frameMaterialName },
  reveal: { name: words('reveal', 'Leibung'), values: revealFormName },
  length_mm: { name: words('length', 'Länge') },
  width_mm: { name: words('width', 'Breite') },
  depth_mm: { name: words('depth', 'Tiefe') },
  fall_mm: { name: words('fall', 'Absturzhöhe') },
  movement_pct: { name: words('movement', 'Bewegung') },
  drain: {
    name: words('water at the door', 'Wasser an der Tür'),
    values: {
      none: words('no drain', 'keine Entwässerung'),
      channel: words('drain channel', 'Entwässerungsrinne'),
      special: words('step-free, worked out apart', 'schwellenlos, eigens geplant'),
    },
  },
  fixing: { name: words('fixing', 'Befestigung'), values: fixingKindName },
  base: { name: words('base', 'Untergrund'), values: anchorBaseName },
  burglary: { name: words('resists burglary', 'einbruchhemmend'), values: yesOrNo },
  exposure: {
    name: words('exposure', 'Bewitterung'),
    values: {
      exposed: words('exposed', 'bewittert'),
      sheltered: words('sheltered', 'geschützt'),
      covered: words('covered', 'verdeckt'),
      inside: words('inside', 'innen'),
    },
  },
  wall: {
    name: words('wall', 'Wand'),
    values: {
      'one-leaf': words('one leaf', 'einschalig'),
      insulated: words('insulated outside', 'außen gedämmt'),
      timber: words('timber frame', 'Holzrahmenbau'),
      'wood-fibre': words('wood-fibre insulation', 'Holzfaserdämmung'),
      other: words('any other', 'jede andere'),
    },
  },
  sill: { name: words('sill', 'Fensterbank'), values: { metal: words('metal', 'Metall'), other: words('any other', 'jede andere') } },
  by: {
    name: words('covered by', 'überdeckt durch'),
    values: {
      rebate: words('rebate', 'Anschlag'),
      insulation: words('insulation', 'Dämmung'),
      closer: words('cavity closer', 'Hohlraumabschluss'),
    },
  },
  of: {
    name: words('of', 'für'),
    values: {
      thread: words('thread', 'Gewinde'),
      edge: words('edge', 'Kante'),
      sealant: words('sealant', 'Dichtstoff'),
      bonded: words('what is bonded', 'Geklebtes'),
      plumb: words('plumb and level', 'Lot und Waage'),
      bow: words('bow', 'Verwölbung'),
      frame: words('frame', 'Rahmen'),
      wall: words('wall', 'Wand'),
      bending: words('bending', 'Biegung'),
      length: words('free length', 'freie Länge'),
      width: words('width', 'Breite'),
      share: words('share of the reveal', 'Anteil der Leibung'),
    },
  },
  table: {
    name: words('table of widths', 'Breitentabelle'),
    values: { 'has-cell': words('names this frame', 'nennt diesen Rahmen'), 'no-cell': words('does not name this frame', 'nennt diesen Rahmen nicht') },
  },
  rated: { name: words('rated', 'nachgewiesen'), values: yesOrNo },
  light: { name: words('in the light', 'im Licht'), values: yesOrNo },
  room: { name: words('room', 'Raum'), values: roomUseName },
  air: {
    name: words('air', 'Luft'),
    values: {
      norm: words('as the standard has it', 'nach Norm'),
      plain: words('plain', 'gewöhnlich'),
      coast: words('at the coast', 'an der Küste'),
      pool: words('of a pool', 'im Hallenbad'),
    },
  },
  lights: { name: words('lights', 'Flügel'), values: { one: words('one', 'einer'), several: words('several', 'mehrere') } },
  substrate: { name: words('substrate', 'Haftgrund'), values: { doubtful: words('doubtful', 'zweifelhaft') } },
  deflection: {
    name: words('class of deflection', 'Durchbiegungsklasse'),
    values: { A: same('A'), B: same('B'), C: same('C'), 'not-told': words('not stated', 'nicht genannt') },
  },
  plane: { name: words('plane', 'Ebene'), values: planeName },
  tape: {
    name: words('tape', 'Fugenband'),
    values: { weatherproof: words('made for weather', 'wetterbeständig'), other: words('any other', 'jedes andere') },
  },
  end: {
    name: words('place', 'Stelle'),
    values: { narrowest: words('narrowest', 'engste'), widest: words('widest', 'breiteste') },
  },
} // prettier-ignore

/** What a limit gives: the key, and its words. Lists whose words a field knows are said by that field's own names. */
const outcomes: Readonly<Record<string, { readonly name: Words; readonly values?: Names }>> = {
  least: { name: words('at least', 'mindestens') },
  least_mm: { name: words('at least', 'mindestens') },
  least_deg: { name: words('at least', 'mindestens') },
  most: { name: words('at most', 'höchstens') },
  most_mm: { name: words('at most', 'höchstens') },
  most_N_mm2: { name: words('at most', 'höchstens') },
  most_kg_m2: { name: words('most water', 'höchstens Wasser') },
  share: { name: words('share of the width', 'Anteil der Breite') },
  mostShare: { name: words('greatest share', 'größter Anteil') },
  within_mm: { name: words('give or take', 'zulässige Abweichung') },
  'share_pct.min': { name: words('at least', 'mindestens') },
  'share_pct.max': { name: words('at most', 'höchstens') },
  faces: { name: words('faces', 'Flanken') },
  diameters: { name: words('diameters', 'Durchmesser') },
  spacing_mm: { name: words('spacing', 'Abstand') },
  corner_mm: { name: words('from the corner', 'ab Ecke') },
  embedment_mm: { name: words('embedment', 'Verankerung') },
  sill_mm: { name: words('up to sill height', 'bis Brüstungshöhe') },
  behind_mm: { name: words('behind the outer face', 'hinter der Außenseite') },
  movement_mm_m: { name: words('movement', 'Bewegung') },
  fRsi: { name: words('temperature factor', 'Temperaturfaktor') },
  humidity_pct: { name: words('humidity at the surface', 'Feuchte an der Oberfläche') },
  wind: { name: words('factor on wind', 'Beiwert für Wind') },
  guard: { name: words('factor on the guard', 'Beiwert für die Absturzsicherung') },
  restraint: { name: words('restraint α', 'Einspannung α') },
  part: { name: words('span over', 'Spannweite durch') },
  isInFull: {
    name: words('wind and guard', 'Wind und Absturzsicherung'),
    values: { true: words('both in full', 'beide voll'), false: words('combined', 'kombiniert') },
  },
  isProven: { name: words('proof of the inner seal', 'Nachweis der inneren Dichtung'), values: { true: words('asked for', 'verlangt') } },
  isOptional: {
    name: words('blocks', 'Klötze'),
    values: { true: words('may be left out', 'dürfen fehlen'), false: words('are expected', 'werden erwartet') },
  },
  dries: { name: words('dries out', 'trocknet aus'), values: yesOrNo },
  basis: {
    name: words('counted on', 'gerechnet auf'),
    values: {
      total: words('the whole movement', 'die ganze Bewegung'),
      'plus-minus': words('movement to either side', 'Bewegung nach jeder Seite'),
      'share-of-smallest': words('a share of the narrowest joint', 'einen Anteil der engsten Fuge'),
    },
  },
  from: {
    name: words('measured from', 'gemessen ab'),
    values: {
      edge: words('the edge of the member', 'Kante des Pfostens'),
      axis: words('the axis of the member', 'Achse des Pfostens'),
      'inner-corner': words('the inner corner', 'innere Ecke'),
      'outer-corner': words('the outer corner', 'äußere Ecke'),
    },
  },
  planes: { name: words('planes', 'Ebenen'), values: planeName },
  classes: { name: words('classes', 'Klassen'), values: Object.fromEntries(['BG1', 'BG2', 'BGR', 'MF1', 'MF2'].map(it => [it, same(it)])) },
  allowed: { name: words('allowed', 'zulässig'), values: { rotary: words('rotary drilling', 'Drehbohren'), hammer: words('hammer drilling', 'Schlagbohren') } },
  accepted: {
    name: words('accepted', 'zulässig'),
    values: { '20LM': same('20LM'), '25LM': same('25LM') },
  },
} // prettier-ignore

/** What a limit gives where it is one word. */
const single: Names = {
  asked: words('as asked for', 'wie verlangt'),
  'drained-or-tight': words('drained, or sealed tight', 'entwässert oder dicht'),
  proof: words('a proof', 'ein Nachweis'),
  'takes-sag': words('takes the sag', 'nimmt die Durchbiegung auf'),
  inside: words('inside the range', 'innerhalb des Bereichs'),
  all: words('every seal', 'jede Dichtung'),
  firm: words('firm', 'fest'),
  brackets: words('on brackets', 'auf Konsolen'),
  sealed: words('sealed', 'abgedichtet'),
  accepted: words('accepted', 'zulässig'),
  'not-accepted': words('not accepted', 'nicht zulässig'),
}

const spoken = (slug: string): Words => same(slug.replaceAll(/[_.-]/g, ' '))

/** The name of a key of a row. One that is not known speaks for itself. */
export const nameOfKey = (key: string): Words => (cases[key] ?? outcomes[key])?.name ?? spoken(key)

/** The name of a word that a case depends on. */
export const nameInCase = (key: string, value: string): Words => cases[key]?.values?.[value] ?? spoken(value)

/** The name of a word that a limit gives: under its key, or alone. */
export const nameInOutcome = (key: string | undefined, value: string): Words =>
  (key === undefined ? single[value] : outcomes[key]?.values?.[value]) ?? spoken(value)

/** Whether a row of a practice is said in names throughout, not in the words of a file; words of lists are the fields' own. */
export const isNamed = (at: 'case' | 'outcome', key: string | undefined, value?: string): boolean => {
  if (key === undefined) return value !== undefined && value in single
  const of = (at === 'case' ? cases : outcomes)[key]
  return of !== undefined && (value === undefined || (of.values !== undefined && value in of.values))
}
