import { type Report, labels, verdicts } from '../../rules'
import { same, type Words, words } from '../../words'
import type { Variant } from '../variants'
import { type Table, decimals } from './table'

/** Frame positions beside each other: coldest place, Psi, and how many rules of each verdict. */
export const variantsTable = (
  all: readonly { readonly variant: Variant; readonly report: Report }[],
): Table => ({
  title: words('Places of the frame', 'Lagen des Rahmens'),
  head: [
    words('from the bearing layer, mm', 'ab tragender Schicht, mm'),
    words('coldest, °C', 'kälteste, °C'),
    same('fRsi'),
    same('Psi, W/(m·K)'),
    ...verdicts.map(it => labels.verdictName[it].word),
  ],
  rows: all.map(({ variant, report }) => [
    marked(decimals(variant.position_mm, 0), variant.isPresent),
    variant.coldest ? decimals(variant.coldest.temperature_C, 1) : none,
    variant.coldest ? decimals(variant.coldest.fRsi, 3) : none,
    variant.psi ? decimals(variant.psi.psi_W_mK, 3) : none,
    ...verdicts.map(it => decimals(report.findings.filter(one => one.verdict === it).length, 0)),
  ]),
  notes: [words('* as it is now', '* wie jetzt')],
})

const none = same('–')

const marked = (it: Words, isPresent: boolean): Words =>
  isPresent ? { en: `${it.en} *`, de: `${it.de} *` } : it
