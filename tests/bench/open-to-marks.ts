import { openProject, samples, saveProject, zonesOf } from '../../core/detail'
import { detailSheet } from '../../core/drawing'
import { jointBand } from '../../core/movement'
import { check } from '../../core/rules'
import { cutSection } from '../../core/section'
import type { Bench } from './bench'

/** A file opened, every verdict found, one side cut and drawn as a sheet. */
export const openToMarks: readonly Bench[] = samples.map(({ file, project }) => {
  const text = saveProject(project)
  return {
    name: `open ${file}, check it, draw its sheet`,
    wanted_ms: 10,
    warmUp: 60,
    runs: 200,
    run: () => {
      const opened = openProject(text)
      if (!opened.ok) throw new Error(opened.problems[0].say.en)
      const it = opened.value.project
      const [place] = zonesOf(it).filter(zone => zone.side === 'left')
      if (!place) throw new Error('an opening has a left jamb')
      const { planned_mm } = jointBand(it, place.opening, place.side, place.zone.id)
      const section = cutSection(it, place, { state: 'planned', width_mm: planned_mm })
      const sheet = detailSheet(it, place, section, { language: 'en', palette: 'colour' })
      return [check(it), sheet]
    },
  }
})
