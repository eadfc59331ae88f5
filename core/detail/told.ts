import type { Stated, Unit } from '../units'
import { type Some, type Words, words } from '../words'

/** A word of a closed list, and how people say it. */
type Word = { readonly value: string; readonly name: Words }

/** An amount that is told of an opening and its work, within what can be. */
export type ToldAmount = {
  readonly key: string
  readonly id: string
  readonly name: Words
  readonly unit: Unit
  readonly min: number
  readonly max: number
  readonly because: Words
}

/** A word that is told of it, out of a closed list. */
export type ToldWord = {
  readonly key: string
  readonly id: string
  readonly name: Words
  readonly choices: Some<Word>
  readonly because: Words
}

const onSite = words('as measured on site', 'am Bau gemessen')
const asDesigned = words('as it is designed', 'wie geplant')
const asDeclared = words('as declared by the product', 'nach Angabe des Produkts')
const floorIsZero = words(
  'from the finished floor inside, which is ±0',
  'vom Fertigfußboden innen aus, der ±0 ist',
)
const byEngineer = words('out of the structural design', 'aus der Tragwerksplanung')

/** Amounts that rules ask for and that no drawing shows. Absent: nobody has told. */
export const toldAmounts = [
  {
    key: 'wind_Pa', id: 'opening.wind', name: words('Peak wind pressure', 'Böengeschwindigkeitsdruck'),
    unit: 'Pa', min: 100, max: 5000, because: words('at the height of the opening', 'in Höhe der Öffnung'),
  },
  {
    key: 'inside', id: 'opening.wind-inside', name: words('Coefficient of the wind inside', 'Innendruckbeiwert'),
    unit: 'one', min: -0.5, max: 0.5, because: words('0 where the envelope is tight', '0 bei dichter Hülle'),
  },
  {
    key: 'lintel_mm', id: 'opening.lintel-sag', name: words('Sag of the lintel afterwards', 'Durchbiegung des Sturzes danach'),
    unit: 'mm', min: 0, max: 60, because: byEngineer,
  },
  {
    key: 'slot_mm', id: 'opening.slot', name: words('Travel of the head bracket', 'Langlochweg der Sturzkonsole'),
    unit: 'mm', min: 0, max: 60, because: asDesigned,
  },
  {
    key: 'inertia_cm4', id: 'opening.free-inertia', name: words('Second moment of the member that spans free', 'Trägheitsmoment des frei gespannten Glieds'),
    unit: 'cm4', min: 0.1, max: 20_000, because: asDeclared,
  },
  {
    key: 'modulus_N_mm2', id: 'opening.free-modulus', name: words('Its modulus of elasticity', 'Sein Elastizitätsmodul'),
    unit: 'N_mm2', min: 1000, max: 220_000, because: words('steel 210000, aluminium 70000, timber 11000', 'Stahl 210000, Aluminium 70000, Holz 11000'),
  },
  {
    key: 'guard_mm', id: 'opening.guard-height', name: words('Height of the guard above the floor', 'Höhe der Umwehrung über Fußboden'),
    unit: 'mm', min: 0, max: 3000, because: asDesigned,
  },
  {
    key: 'guard_N_m', id: 'opening.guard-load', name: words('Line load on the guard', 'Holmlast'),
    unit: 'N_m', min: 0, max: 5000, because: byEngineer,
  },
  {
    key: 'guardAt_mm', id: 'opening.guard-at', name: words('Line load above the lower end of the frame', 'Holmlast über Unterkante Rahmen'),
    unit: 'mm', min: 0, max: 3000, because: byEngineer,
  },
  {
    key: 'flank_deg', id: 'opening.flank-angle', name: words('Angle between the flanks', 'Winkel zwischen den Flanken'),
    unit: 'deg', min: 0, max: 30, because: onSite,
  },
  {
    key: 'overlength_pct', id: 'opening.tape-overlength', name: words('Overlength of the tape', 'Überlänge des Bands'),
    unit: 'pct', min: -5, max: 10, because: words('cut longer than the run', 'länger als die Strecke geschnitten'),
  },
  {
    key: 'lap_mm', id: 'opening.membrane-lap', name: words('Lap of membranes', 'Überlappung der Folien'),
    unit: 'mm', min: 0, max: 300, because: words('on themselves and at corners', 'an Stößen und Ecken'),
  },
  {
    key: 'work_C', id: 'opening.work-temperature', name: words('Temperature of the work', 'Temperatur bei der Arbeit'),
    unit: 'C', min: -30, max: 60, because: words('of air and flanks when they are sealed', 'von Luft und Flanken beim Abdichten'),
  },
  {
    key: 'openFor', id: 'opening.open-months', name: words('Months open to weather', 'Monate offen im Wetter'),
    unit: 'one', min: 0, max: 60, because: words('before the joint is covered', 'bis die Fuge abgedeckt ist'),
  },
  {
    key: 'plumb_mm_m', id: 'opening.plumb', name: words('Out of plumb and level', 'Abweichung von Lot und Waage'),
    unit: 'mm_m', min: 0, max: 30, because: onSite,
  },
  {
    key: 'bow_mm_m', id: 'opening.bow', name: words('Bow after tightening', 'Verwölbung nach dem Anziehen'),
    unit: 'mm_m', min: 0, max: 30, because: onSite,
  },
  {
    key: 'frameMoisture_pct', id: 'opening.frame-moisture', name: words('Moisture of the timber frame', 'Feuchte des Holzrahmens'),
    unit: 'pct', min: 0, max: 60, because: onSite,
  },
  {
    key: 'wallMoisture_pct', id: 'opening.wall-moisture', name: words('Moisture of timber in the wall', 'Feuchte des Holzes in der Wand'),
    unit: 'pct', min: 0, max: 60, because: onSite,
  },
  {
    key: 'nominalWidth_mm', id: 'opening.nominal-width', name: words('Nominal width of the opening', 'Nennbreite der Öffnung'),
    unit: 'mm', min: 100, max: 20_000, because: asDesigned,
  },
  {
    key: 'nominalHeight_mm', id: 'opening.nominal-height', name: words('Nominal height of the opening', 'Nennhöhe der Öffnung'),
    unit: 'mm', min: 100, max: 20_000, because: asDesigned,
  },
  {
    key: 'sound_dB', id: 'opening.sound-asked', name: words('Sound value asked of the joint', 'Verlangtes Schalldämmmaß der Fuge'),
    unit: 'dB', min: 10, max: 80, because: words('by the job', 'vom Auftrag'),
  },
  {
    key: 'jointSound_dB', id: 'opening.joint-sound', name: words('Sound value of the joint', 'Schalldämmmaß der Fuge'),
    unit: 'dB', min: 10, max: 80, because: asDeclared,
  },
  {
    key: 'threshold_mm', id: 'opening.threshold-top', name: words('Top of the threshold over the finished floor', 'Oberkante Schwelle über Fertigfußboden'),
    unit: 'mm', min: -100, max: 500, because: floorIsZero,
  },
  {
    key: 'outside_mm', id: 'opening.threshold-outside', name: words('Finished level outside over the finished floor', 'Fertiger Belag außen über Fertigfußboden'),
    unit: 'mm', min: -2000, max: 500, because: floorIsZero,
  },
  {
    key: 'edge_mm', id: 'opening.threshold-edge', name: words('Upper edge of the waterproofing over the finished floor', 'Oberkante Abdichtung über Fertigfußboden'),
    unit: 'mm', min: -100, max: 500, because: floorIsZero,
  },
] as const satisfies readonly ToldAmount[] // prettier-ignore

const word = <V extends string>(value: V, en: string, de: string) => ({ value, name: words(en, de) })
const yes = word('yes', 'yes', 'ja')
const no = word('no', 'no', 'nein')
const rainClass = <V extends string>(value: V) => word(value, `class ${value}`, `Klasse ${value}`)
/** Classes of tightness against driving rain, lowest first (EN 12208): above 600 Pa by steps of 150 Pa, named by them. */
const rainClasses = [
  rainClass('1A'), rainClass('2A'), rainClass('3A'), rainClass('4A'), rainClass('5A'),
  rainClass('6A'), rainClass('7A'), rainClass('8A'), rainClass('9A'), rainClass('E750'), rainClass('E900'),
  rainClass('E1050'), rainClass('E1200'), rainClass('E1350'), rainClass('E1500'),
] as const // prettier-ignore
const tested = words('out of its test report', 'aus dem Prüfbericht')
const inWork = words('as the work is done', 'wie gearbeitet wird')

/** Words that rules ask for and that no drawing shows. Absent: nobody has told. */
export const toldWords = [
  {
    key: 'corners', id: 'opening.corners', name: words('Planes at corners and penetrations', 'Ebenen an Ecken und Durchdringungen'),
    choices: [word('closed', 'closed', 'geschlossen'), word('open', 'open', 'offen')], because: asDesigned,
  },
  {
    key: 'airLine', id: 'opening.air-line', name: words('Airtight line below the board and through extensions', 'Luftdichte Linie unter der Innenbank und durch Verbreiterungen'),
    choices: [word('continuous', 'continuous', 'durchgehend'), word('open', 'open', 'offen'), word('none', 'there is none of these', 'nichts davon ist da')], because: asDesigned,
  },
  {
    key: 'plasterEdge', id: 'opening.plaster-edge', name: words('Plaster at the frame', 'Putz am Rahmen'),
    choices: [word('bead', 'ends at a bead', 'endet an einem Profil'), word('cut', 'is cut free', 'ist getrennt'), word('membrane', 'ends on a membrane', 'endet auf einer Folie'), word('hard', 'runs hard against it', 'läuft hart dagegen')], because: asDesigned,
  },
  {
    key: 'innerProof', id: 'opening.inner-proof', name: words('Airtightness of the inner seal', 'Luftdichtheit der inneren Dichtung'),
    choices: [word('proven', 'proven', 'nachgewiesen'), word('none', 'without proof', 'ohne Nachweis')], because: asDeclared,
  },
  {
    key: 'foamInLight', id: 'opening.foam-in-light', name: words('Light reaches the foam', 'Licht erreicht den Schaum'),
    choices: [yes, no], because: asDesigned,
  },
  {
    key: 'substrate', id: 'opening.substrate', name: words('Flanks that seals are bonded to', 'Flanken, an denen Dichtungen haften'),
    choices: [word('sound', 'sound, clean and dry', 'tragfähig, sauber und trocken'), word('doubtful', 'doubtful', 'zweifelhaft'), word('unsound', 'loose, dusty or wet', 'lose, staubig oder nass')], because: onSite,
  },
  {
    key: 'peelTest', id: 'opening.peel-test', name: words('Peel test on site', 'Haftversuch am Bau'),
    choices: [word('passed', 'passed', 'bestanden'), word('failed', 'failed', 'nicht bestanden'), word('none', 'not made', 'nicht gemacht')], because: onSite,
  },
  {
    key: 'compatible', id: 'opening.compatible', name: words('Neighbouring materials compatible', 'Benachbarte Stoffe verträglich'),
    choices: [word('proven', 'proven', 'nachgewiesen'), word('not', 'not compatible', 'nicht verträglich')], because: asDeclared,
  },
  {
    key: 'flankFace', id: 'opening.flank-face', name: words('Face of the flanks', 'Oberfläche der Flanken'),
    choices: [word('flush', 'smooth, mortar joints flush', 'glatt, Mörtelfugen bündig'), word('raked', 'open mortar joints', 'offene Mörtelfugen')], because: onSite,
  },
  {
    key: 'tapeCorners', id: 'opening.tape-corners', name: words('Tape at the corners', 'Band an den Ecken'),
    choices: [word('butted', 'butted', 'gestoßen'), word('turned', 'turned round', 'umgelenkt'), word('stretched', 'stretched', 'gedehnt')], because: inWork,
  },
  {
    key: 'workDry', id: 'opening.work-dry', name: words('Dry and free of frost', 'Trocken und frostfrei'),
    choices: [word('yes', 'dry, without frost', 'trocken, ohne Frost'), word('no', 'wet or with frost', 'nass oder mit Frost')], because: words('when the seals are bonded', 'beim Verkleben'),
  },
  {
    key: 'workOrder', id: 'opening.work-order', name: words('Inner seal and plaster', 'Innere Dichtung und Putz'),
    choices: [word('seal-first', 'the seal is closed before plaster', 'erst Dichtung, dann Putz'), word('plaster-first', 'plaster comes first', 'erst Putz')], because: inWork,
  },
  {
    key: 'water', id: 'opening.water', name: words('Water that the sheet at floor level keeps out', 'Wasser, das die Bahn am Fußpunkt abhält'),
    choices: [word('moisture', 'moisture of the ground', 'Bodenfeuchte'), word('pressure', 'water under pressure', 'drückendes Wasser'), word('roof', 'a roof, balcony or terrace', 'Dach, Balkon oder Terrasse'), word('others', 'others waterproof it', 'andere dichten ab')], because: asDesigned,
  },
  {
    key: 'drivingRain', id: 'opening.driving-rain', name: words('Driving rain at the place', 'Schlagregen am Ort'),
    choices: [word('sheltered', 'sheltered', 'geschützt'), word('moderate', 'moderate', 'mäßig'), word('severe', 'severe', 'stark'), word('very-severe', 'very severe', 'sehr stark')], because: words('by the map of the country', 'nach der Karte des Landes'),
  },
  {
    key: 'rainClass', id: 'opening.rain-class', name: words('Tightness of the element against driving rain', 'Schlagregendichtheit des Elements'),
    choices: rainClasses, because: tested,
  },
  {
    key: 'rainAsked', id: 'opening.rain-asked', name: words('Tightness against driving rain asked for', 'Verlangte Schlagregendichtheit'),
    choices: rainClasses, because: words('by the job', 'vom Auftrag'),
  },
  {
    key: 'drains', id: 'opening.drains', name: words('Drain slots of the frame', 'Entwässerung des Rahmens'),
    choices: [word('free', 'free', 'frei'), word('closed', 'foamed or sealed over', 'zugeschäumt oder überdichtet')], because: inWork,
  },
  {
    key: 'laps', id: 'opening.laps', name: words('Laps of the rain layer', 'Überlappungen der Regenschicht'),
    choices: [word('shed', 'jamb over sill, head over jamb', 'Leibung über Bank, Sturz über Leibung'), word('against', 'some lie against the water', 'manche liegen gegen das Wasser')], because: asDesigned,
  },
  {
    key: 'thresholdDrain', id: 'opening.threshold-drain', name: words('Water at the threshold', 'Wasser an der Schwelle'),
    choices: [
      word('none', 'no drain at the door', 'keine Entwässerung an der Tür'),
      word('channel', 'drain channel with a grating at the door', 'Entwässerungsrinne mit Rost an der Tür'),
      word('special', 'step-free: channel, fall away, flanged frame, second barrier', 'stufenlos: Rinne, Gefälle weg, Rahmen mit Flansch, zweite Sperre'),
    ], because: asDesigned,
  },
  {
    key: 'thresholdFall', id: 'opening.threshold-fall', name: words('Surface outside the door', 'Belag vor der Tür'),
    choices: [word('away', 'falls away from the door', 'fällt von der Tür weg'), word('level', 'is level', 'liegt waagerecht'), word('towards', 'falls towards the door', 'fällt zur Tür hin')], because: asDesigned,
  },
  {
    key: 'stepFree', id: 'opening.threshold-step-free', name: words('Step-free access asked for', 'Stufenloser Zugang verlangt'),
    choices: [yes, no], because: words('by the job', 'vom Auftrag'),
  },
  {
    key: 'infill', id: 'opening.infill', name: words('Glass or infill that guards', 'Glas oder Füllung als Absturzsicherung'),
    choices: [word('proven', 'category and impact proof named', 'Kategorie und Stoßnachweis genannt'), word('category', 'category only', 'nur die Kategorie'), word('none', 'neither', 'nichts davon')], because: byEngineer,
  },
  {
    key: 'deflection', id: 'opening.deflection-class', name: words('Deflection class of the element', 'Durchbiegungsklasse des Elements'),
    choices: [word('A', 'A, span/150', 'A, Stützweite/150'), word('B', 'B, span/200', 'B, Stützweite/200'), word('C', 'C, span/300', 'C, Stützweite/300')], because: tested,
  },
  {
    key: 'airAround', id: 'opening.air-around', name: words('Air that fixings stand in', 'Luft, in der Befestigungen stehen'),
    choices: [word('plain', 'plain', 'gewöhnlich'), word('coast', 'coast', 'Küste'), word('pool', 'indoor pool', 'Hallenbad')], because: words('what corrodes them', 'was sie rosten lässt'),
  },
  {
    key: 'fixingMetal', id: 'opening.fixing-metal', name: words('Metal of the fixings', 'Metall der Befestigung'),
    choices: [word('plain', 'plain steel', 'blanker Stahl'), word('zinc', 'zinc plated', 'verzinkt'), word('A2', 'stainless A2', 'nichtrostend A2'), word('A4', 'stainless A4', 'nichtrostend A4'), word('special', 'high-alloy, by an engineer', 'hochlegiert, nach Bemessung')], because: asDeclared,
  },
  {
    key: 'screening', id: 'opening.screening', name: words('Asbestos, lead, PCB, tar in what is taken out', 'Asbest, Blei, PCB, Teer im Ausbau'),
    choices: [word('new', 'nothing old is taken out', 'nichts Altes wird ausgebaut'), word('screened', 'screened before work', 'vor der Arbeit untersucht'), word('not', 'not screened', 'nicht untersucht')], because: onSite,
  },
  {
    key: 'fire', id: 'opening.fire', name: words('Joint in a fire-rated or separating wall', 'Fuge in einer Brand- oder Trennwand'),
    choices: [yes, no], because: byEngineer,
  },
  {
    key: 'replaced', id: 'opening.replaced', name: words('Share of the windows replaced', 'Anteil ersetzter Fenster'),
    choices: [word('new', 'a new building', 'Neubau'), word('few', 'up to a third', 'bis ein Drittel'), word('many', 'more than a third', 'mehr als ein Drittel'), word('planned', 'more, with a ventilation concept', 'mehr, mit Lüftungskonzept')], because: words('of the dwelling', 'der Wohnung'),
  },
] as const satisfies readonly ToldWord[] // prettier-ignore

type AmountKey = (typeof toldAmounts)[number]['key']
type WordKey = (typeof toldWords)[number]['key']
type WordOf<K extends WordKey> = Extract<
  (typeof toldWords)[number],
  { readonly key: K }
>['choices'][number]['value']

/** What is told of an opening and its work beside its geometry. Absent: nobody has told. */
export type Told = { readonly [K in AmountKey]?: Stated<number> } & {
  readonly [K in WordKey]?: Stated<WordOf<K>>
}
