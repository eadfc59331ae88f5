import { words } from '../words'

/** Writings on structures, tolerances, classes and duties: what the building asks of a joint, beside the joint itself. */
export const buildingSources = {
  'en-1990': {
    kind: 'standard',
    title: words('EN 1990: basis of structural design', 'EN 1990: Grundlagen der Tragwerksplanung'),
  },
  'guarding-directive': {
    kind: 'guide',
    title: words(
      'Directive on elements that guard against falling (1985)',
      'Richtlinie „Bauteile, die gegen Absturz sichern“ (1985)',
    ),
  },
  'anchor-guideline': {
    kind: 'guide',
    title: words(
      'ETAG 001, annex C: design of anchorages, as an anchor handbook quotes it',
      'ETAG 001, Anhang C: Bemessung von Verankerungen, nach einem Dübelhandbuch',
    ),
  },
  'element-classes': {
    kind: 'trade page',
    title: words('Tables of EN 12207 and EN 12210', 'Tabellen der EN 12207 und EN 12210'),
  },
  'rain-tightness-steps': {
    kind: 'standard',
    title: words(
      'EN 12208: watertightness of windows and doors',
      'EN 12208: Schlagregendichtheit von Fenstern und Türen',
    ),
  },
  'building-tolerances': {
    kind: 'standard',
    title: words('DIN 18202: tolerances in building construction', 'DIN 18202: Toleranzen im Hochbau'),
  },
  'catalogue-clauses': {
    kind: 'trade page',
    title: words(
      'Clauses of ÖNORM B 5320 quoted in a catalogue',
      'Abschnitte der ÖNORM B 5320 in einem Katalog',
    ),
  },
  'assembly-manual': {
    kind: 'trade page',
    title: words(
      'Assembly manual for PVC windows and doors: pads and tolerances',
      'Montageanleitung für Kunststofffenster und -türen: Klötze und Toleranzen',
    ),
  },
  'guarding-seminar': {
    kind: 'guide',
    title: words(
      'Seminar paper on windows that guard against falling',
      'Seminarbeitrag zu absturzsichernden Fenstern',
    ),
  },
  'guarding-heights': {
    kind: 'trade page',
    title: words('Guarding heights by building code', 'Brüstungs- und Umwehrungshöhen nach Bauordnung'),
  },
  'burglary-note': {
    kind: 'trade page',
    title: words(
      'Installation note for burglar-resistant elements',
      'Montagehinweis für einbruchhemmende Elemente',
    ),
  },
} as const
