import { type Some, type Words, words } from '../words'
import { buildingSources } from './building'

/** What kind of writing a source is. No firm is named: the title says what the writing is about. */
export const sourceKinds = ['standard', 'guide', 'trade page', 'handbook', 'own'] as const
export type SourceKind = (typeof sourceKinds)[number]
export const sourceKindName: Readonly<Record<SourceKind, Words>> = {
  standard: words('standard', 'Norm'),
  guide: words('guide', 'Leitfaden'),
  'trade page': words('trade page', 'Fachseite'),
  handbook: words('handbook', 'Fachbuch'),
  own: words('own', 'eigene'),
}

/** A writing that reports a figure or a practice. */
export type Source = { readonly kind: SourceKind; readonly title: Words }

/**
 * Every source that a limit, a material or a formula may name. A citation of anything else does not compile.
 * A trade page reports a standard or a practice; it is not the standard itself.
 */
export const sources = {
  own: { kind: 'own', title: words('Own value of the office', 'Eigener Wert des Büros') },
  convention: { kind: 'own', title: words('Convention of this program', 'Festlegung dieses Programms') },
  trade: { kind: 'own', title: words('Common practice of the trade', 'Übliche Praxis des Handwerks') },
  'joint-width-table': {
    kind: 'trade page',
    title: words(
      'Window connection joints: least widths by frame material',
      'Fensteranschlussfugen: Mindestbreiten nach Rahmenwerkstoff',
    ),
  },
  'resealing-table': {
    kind: 'trade page',
    title: words(
      'Re-sealing joints to DIN 18540, guide table',
      'Fugensanierung nach DIN 18540, Richtwerttabelle',
    ),
  },
  'window-joint-leaflet': {
    kind: 'guide',
    title: words(
      'Sealant industry leaflet on window joints, chapters 3 and 7',
      'Merkblatt der Dichtstoffindustrie zu Fensterfugen, Kapitel 3 und 7',
    ),
  },
  'installation-materials': {
    kind: 'trade page',
    title: words(
      'Window installation materials: sealants and membranes, citing ÖNORM',
      'Materialien der Fenstermontage: Dichtstoffe und Folien, nach ÖNORM',
    ),
  },
  'warranty-gaps': {
    kind: 'guide',
    title: words(
      'Gaps around windows, sealants and trims: UK warranty technical page',
      'Fugen um Fenster, Dichtstoffe und Leisten: technische Seite einer britischen Bauversicherung',
    ),
  },
  'fixing-and-joint-summary': {
    kind: 'trade page',
    title: words(
      'Summary of the fixing, joint and block rules of ÖNORM B 5320',
      'Zusammenfassung der Befestigungs-, Fugen- und Klotzregeln der ÖNORM B 5320',
    ),
  },
  'tape-standard-changes': {
    kind: 'trade page',
    title: words(
      'What DIN 18542:2020 changed for sealing tapes',
      'Was DIN 18542:2020 für Dichtungsbänder änderte',
    ),
  },
  'window-lexicon': {
    kind: 'trade page',
    title: words(
      'Thermal expansion entry of a PVC window lexicon',
      'Eintrag Wärmeausdehnung in einem Lexikon für Kunststofffenster',
    ),
  },
  'course-sheets-2002': {
    kind: 'handbook',
    title: words(
      'University course sheets: sealant joint calculation, 2002 and 2003',
      'Vorlesungsblätter: Berechnung von Dichtstofffugen, 2002 und 2003',
    ),
  },
  'course-sheets-2004': {
    kind: 'handbook',
    title: words(
      'University course sheets: sealant joint calculation, 2004',
      'Vorlesungsblätter: Berechnung von Dichtstofffugen, 2004',
    ),
  },
  'detailing-handbook': {
    kind: 'handbook',
    title: words(
      'Architectural detailing handbook: joint size and worked formula',
      'Handbuch der Baudetails: Fugenmaß und gerechnete Formel',
    ),
  },
  'textbook-exercise': {
    kind: 'handbook',
    title: words(
      'Textbook exercise on the expansion of a brick wall',
      'Lehrbuchaufgabe zur Ausdehnung einer Ziegelwand',
    ),
  },
  'brick-joint-article': {
    kind: 'trade page',
    title: words(
      'Brick movement joints, article of a specification consultancy',
      'Bewegungsfugen in Ziegelmauerwerk, Beitrag eines Fachplaners',
    ),
  },
  'glass-association-bulletin': {
    kind: 'guide',
    title: words(
      'Regional glass association bulletin: sealant joint design',
      'Mitteilung eines regionalen Glasverbands: Bemessung von Dichtstofffugen',
    ),
  },
  'brick-note-18a': {
    kind: 'guide',
    title: words(
      'US brick association technical note 18A, extracts',
      'Technische Mitteilung 18A des US-Ziegelverbands, Auszüge',
    ),
  },
  'working-drawings-handbook': {
    kind: 'handbook',
    title: words(
      'Working drawings handbook: joint tolerances',
      'Handbuch der Ausführungszeichnungen: Fugentoleranzen',
    ),
  },
  'waterproofing-handbook': {
    kind: 'handbook',
    title: words('Construction waterproofing handbook, p. 480', 'Handbuch der Bauabdichtung, S. 480'),
  },
  'position-and-blocks-article': {
    kind: 'trade page',
    title: words(
      'Test institute article on fixing and block positions',
      'Beitrag eines Prüfinstituts zu Befestigungs- und Klotzabständen',
    ),
  },
  'foam-is-no-seal': {
    kind: 'guide',
    title: words(
      'Municipal advice body: foam is not a seal',
      'Kommunale Beratungsstelle: Schaum ist keine Abdichtung',
    ),
  },
  'inside-tighter': {
    kind: 'trade page',
    title: words('Inside tighter than outside', 'Innen dichter als außen'),
  },
  'foam-centre-movement': {
    kind: 'trade page',
    title: words('Foam information page on frame movement', 'Informationsseite Schaum: Rahmenbewegung'),
  },
  'sd-definitions': {
    kind: 'trade page',
    title: words(
      'Equivalent air layers and the limits of DIN 4108-3',
      'Diffusionsäquivalente Luftschichtdicken und Grenzen der DIN 4108-3',
    ),
  },
  'variable-retarders': {
    kind: 'trade page',
    title: words('Moisture-variable vapour retarders', 'Feuchtevariable Dampfbremsen'),
  },
  'backer-rod-oversize': {
    kind: 'trade page',
    title: words(
      'Backing rod about a quarter wider than the joint',
      'Hinterfüllschnur rund ein Viertel breiter als die Fuge',
    ),
  },
  'mu-lists': {
    kind: 'trade page',
    title: words('Lists of vapour resistance factors', 'Listen von Wasserdampf-Diffusionswiderstandszahlen'),
  },
  'en-iso-10456': {
    kind: 'standard',
    title: words(
      'EN ISO 10456: hygrothermal design values',
      'EN ISO 10456: wärme- und feuchteschutztechnische Bemessungswerte',
    ),
  },
  'en-iso-10077-2': {
    kind: 'standard',
    title: words(
      'EN ISO 10077-2: thermal transmittance of frames',
      'EN ISO 10077-2: Wärmedurchgang von Rahmen',
    ),
  },
  'din-4108-2': {
    kind: 'standard',
    title: words(
      'DIN 4108-2: least thermal protection, surface temperatures at thermal bridges',
      'DIN 4108-2: Mindestwärmeschutz, Oberflächentemperaturen an Wärmebrücken',
    ),
  },
  'din-4108-3': {
    kind: 'standard',
    title: words(
      'DIN 4108-3: protection against moisture subject to climate conditions',
      'DIN 4108-3: klimabedingter Feuchteschutz',
    ),
  },
  'oenorm-b-8110-2': {
    kind: 'standard',
    title: words(
      'ÖNORM B 8110-2: vapour diffusion, convection and protection against condensation',
      'ÖNORM B 8110-2: Wasserdampfdiffusion, -konvektion und Kondensationsschutz',
    ),
  },
  'condensation-leaflet': {
    kind: 'guide',
    title: words(
      'British information paper on condensation risk at junctions',
      'Britisches Informationsblatt zum Tauwasserrisiko an Anschlüssen',
    ),
  },
  'en-iso-13788': {
    kind: 'standard',
    title: words(
      'EN ISO 13788: surface humidity and interstitial condensation',
      'EN ISO 13788: Oberflächenfeuchte und Tauwasser im Bauteil',
    ),
  },
  'din-18540': {
    kind: 'standard',
    title: words(
      'DIN 18540: sealing joints of outside walls with sealants',
      'DIN 18540: Abdichten von Außenwandfugen mit Dichtstoffen',
    ),
  },
  'joint-calculation-guide': {
    kind: 'standard',
    title: words(
      'ASTM C1472: guide for calculating movement and sealant joint width',
      'ASTM C1472: Leitfaden zur Berechnung von Bewegung und Dichtstofffugenbreite',
    ),
  },
  'sealant-selection-standard': {
    kind: 'standard',
    title: words('BS 6213: selection of construction sealants', 'BS 6213: Auswahl von Baudichtstoffen'),
  },
  'window-installation-guide': {
    kind: 'guide',
    title: words(
      'Guide to the installation of windows and doors',
      'Leitfaden zur Montage von Fenstern und Türen',
    ),
  },
  'frame-anchors': {
    kind: 'trade page',
    title: words(
      'Frame screws and plugs: usual embedment and edge distances by base',
      'Rahmenschrauben und -dübel: übliche Verankerungstiefen und Randabstände nach Untergrund',
    ),
  },
  'en-1995': {
    kind: 'standard',
    title: words('EN 1995-1-1: design of timber structures', 'EN 1995-1-1: Bemessung von Holzbauten'),
  },
  'tape-classes': {
    kind: 'trade page',
    title: words(
      'Questions and answers on the tape classes of DIN 18542',
      'Fragen und Antworten zu den Bandklassen der DIN 18542',
    ),
  },
  'second-plane-article': {
    kind: 'trade page',
    title: words(
      'Second sealing plane in timber construction, trade press',
      'Zweite Dichtebene im Holzbau, Fachpresse',
    ),
  },
  'wood-fibre-sills': {
    kind: 'guide',
    title: words(
      'Wood-fibre association: external insulation and window sills',
      'Verband Holzfaserdämmstoffe: Außendämmung und Fensterbänke',
    ),
  },
  'aluminium-sills': {
    kind: 'trade page',
    title: words(
      'Aluminium sills: overhang by DIN 18339 and guide',
      'Aluminiumfensterbänke: Überstand nach DIN 18339 und Leitfaden',
    ),
  },
  'sill-decoupling': {
    kind: 'trade page',
    title: words('Decoupling of sills from render', 'Entkopplung von Fensterbank und Putz'),
  },
  'brick-lexicon': {
    kind: 'guide',
    title: words(
      'Brick association lexicon: drilling and site tests',
      'Lexikon des Ziegelverbands: Bohren und Baustellenversuche',
    ),
  },
  'steel-core-text': {
    kind: 'trade page',
    title: words(
      'Reinforcement of PVC-U frames, text of a maker',
      'Aussteifung von PVC-U-Rahmen, Text eines Herstellers',
    ),
  },
  'wall-position-article': {
    kind: 'trade page',
    title: words('Where a window stands in the depth of a wall', 'Lage des Fensters in der Wandtiefe'),
  },
  'approved-document-c': {
    kind: 'guide',
    title: words('Approved Document C: resistance to moisture', 'Approved Document C: Schutz gegen Feuchte'),
  },
  'approved-document-k': {
    kind: 'guide',
    title: words('Approved Document K: protection from falling', 'Approved Document K: Schutz gegen Absturz'),
  },
  'approved-document-m': {
    kind: 'guide',
    title: words(
      'Approved Document M: access to and use of buildings',
      'Approved Document M: Zugang und Nutzung von Gebäuden',
    ),
  },
  'threshold-page': {
    kind: 'trade page',
    title: words(
      'Upstands at thresholds of doors and step-free special construction',
      'Anschlusshöhen an Türschwellen und stufenlose Sonderkonstruktion',
    ),
  },
  'oib-4': {
    kind: 'guide',
    title: words('OIB guideline 4: safety in use', 'OIB-Richtlinie 4: Nutzungssicherheit'),
  },
  'uk-installation-guides': {
    kind: 'guide',
    title: words(
      'British installation guides for PVC-U windows',
      'Britische Montageanleitungen für PVC-U-Fenster',
    ),
  },
  ...buildingSources,
} as const satisfies Readonly<Record<string, Source>>

/** The name of a registered source. */
export type SourceId = keyof typeof sources

/** All names, for the schema of a file. The cast: `Object.keys` forgets which keys, and that there is one. */
export const sourceIds = Object.keys(sources) as unknown as Some<SourceId>

/** The source of that name. */
export const source = (id: SourceId): Source => sources[id]
