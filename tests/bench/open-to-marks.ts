import { cameraOf } from '../../app/window/board/camera'
import { drawBoard } from '../../app/window/board/draw-board'
import { beginSession } from '../../app/editor'
import { openProject, type Project, samples, saveProject, type ZonePlace, zonesOf } from '../../core/detail'
import { detailSheet } from '../../core/drawing'
import { jointBand } from '../../core/movement'
import { check } from '../../core/rules'
import { cutSection, type Section } from '../../core/section'
import type { Bench } from './bench'

/** A file opened, every verdict found, one side cut and drawn: as marks on the board, and as a settled sheet. */
export const openToMarks: readonly Bench[] = samples.flatMap(({ file, project }): readonly Bench[] => {
  const text = saveProject(project)
  const { view } = beginSession(project)
  const camera = cameraOf(view, { at: [40, 60], zoom: 2.4 }, { width_px: 1152, height_px: 698 })
  const board = { camera, language: 'en', numbers: false } as const
  const bench = (name: string, wanted_ms: number, draw: (cut: Cut) => unknown): Bench => ({
    name: `open ${file}, check it, ${name}`,
    wanted_ms,
    warmUp: 60,
    runs: 200,
    run: () => {
      const cut = cutOf(text)
      return [check(cut.project), draw(cut)]
    },
  })
  return [
    bench('draw its cut', 10, it => drawBoard(it.project, it.place, it.section, board)),
    bench('draw its sheet', 60, it =>
      detailSheet(it.project, it.place, it.section, { language: 'en', palette: 'colour' }),
    ),
  ]
})

type Cut = { readonly project: Project; readonly place: ZonePlace; readonly section: Section }

const cutOf = (text: string): Cut => {
  const opened = openProject(text)
  if (!opened.ok) throw new Error(opened.problems[0].say.en)
  const { project } = opened.value
  const place = zonesOf(project).find(zone => zone.side === 'left')
  if (!place) throw new Error('an opening has a left jamb')
  const { planned_mm } = jointBand(project, place.opening, place.side, place.zone.id)
  return { project, place, section: cutSection(project, place, { state: 'planned', width_mm: planned_mm }) }
}
