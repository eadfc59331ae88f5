import { type Words, words } from '../words'

/** Why a joint that is tighter outside than inside is accepted, where somebody stands for it. */
export const reversals = [
  'both-sealants', 'threshold', 'calculation', 'hot-humid-climate', 'unheated-room', 'variable-membrane',
] as const // prettier-ignore
export type Reversal = (typeof reversals)[number]
export const reversalName: Readonly<Record<Reversal, Words>> = {
  'both-sealants': words('the same sealant on both sides', 'derselbe Dichtstoff auf beiden Seiten'),
  threshold: words('waterproofing sheet at a threshold', 'Abdichtungsbahn an einer Schwelle'),
  calculation: words('proof by calculation', 'rechnerischer Nachweis'),
  'hot-humid-climate': words(
    'cooled building in a hot, humid climate',
    'gekühltes Gebäude in feuchtwarmem Klima',
  ),
  'unheated-room': words('unheated room', 'unbeheizter Raum'),
  'variable-membrane': words('moisture-variable membrane inside', 'feuchtevariable Folie innen'),
}

/** What has to be handed over with it: from memory, trade practice. */
export const reversalEvidence: Readonly<Record<Reversal, Words>> = {
  'both-sealants': words(
    'proof that the inner plane is airtight, that the flanks are open to vapour, and the declared s_d of both beads',
    'Nachweis der luftdichten inneren Ebene, diffusionsoffener Flanken und der erklärten s_d beider Fugen',
  ),
  threshold: words(
    's_d inside as high or higher, insulated and drained base profile, no trapped wood, hygrothermal check',
    's_d innen mindestens gleich hoch, gedämmtes entwässertes Basisprofil, kein eingeschlossenes Holz, hygrothermischer Nachweis',
  ),
  calculation: words(
    'report to EN ISO 13788 or EN 15026: no accumulation, surface criterion met',
    'Bericht nach EN ISO 13788 oder EN 15026: keine Auffeuchtung, Oberflächenkriterium erfüllt',
  ),
  'hot-humid-climate': words(
    'climate file; inner plane airtight and open to vapour',
    'Klimadaten; innere Ebene luftdicht und diffusionsoffen',
  ),
  'unheated-room': words('class of the room', 'Raumklasse'),
  'variable-membrane': words(
    's_d of the membrane dry and humid, both declared',
    's_d der Folie trocken und feucht, beide erklärt',
  ),
}
