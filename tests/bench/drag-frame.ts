import { beginSession, dispatch, dragged, gripsOf, measuresOf, placeOf, type Session } from '../../app/editor'
import { cameraOf } from '../../app/window/board/camera'
import { type BoardDrawing, drawBoard } from '../../app/window/board/draw-board'
import { partsOf, samples } from '../../core/detail'
import { jointBand } from '../../core/movement'
import { check, emptyMemory } from '../../core/rules'
import { cutSection } from '../../core/section'
import type { Bench } from './bench'

/** All that one move of the pointer costs before something is painted: from the drag to the ink on the board. */
export const dragFrame: readonly Bench[] = samples.flatMap(({ file, project }) =>
  ['opening.position', 'joint.planned'].map((field): Bench => {
    const begun = beginSession(project)
    const { view } = begun
    const grip = gripsOf(project, view).find(it => it.at.field === field)
    if (!grip) throw new Error(`${file} has no grip for ${field}`)
    const camera = cameraOf(view, { at: [40, 60], zoom: 2.4 }, { width_px: 1152, height_px: 698 })
    let session: Session = begun
    let drawn: BoardDrawing | undefined
    let move = 0
    // as the window keeps it from one move to the next
    const memory = emptyMemory()
    return {
      name: `drag ${field} of ${file} by one move`,
      wanted_ms: 8,
      warmUp: 60,
      runs: 200,
      run: () => {
        move = (move + 1) % 24
        const moved = [grip.along[0] * (move / 4), grip.along[1] * (move / 4)] as const
        const to = dragged(project, view, { grip, moved, reach: { reach_mm: 2.5, held: true } })
        session = dispatch(session, { kind: 'preview', edits: to.edits, says: to.says }).session
        const now = session.project
        const place = placeOf(now, view)
        const { planned_mm } = jointBand(now, place.opening, place.side, place.zone.id)
        const section = cutSection(now, place, { state: 'planned', width_mm: planned_mm })
        const kept = drawn && { kept: drawn.layout.slots }
        drawn = drawBoard(now, place, section, { camera, language: 'en', numbers: true, ...kept })
        const held = gripsOf(now, view).find(it => it.at.field === field)
        return [
          check(now, undefined, undefined, memory),
          partsOf(now, place),
          held && measuresOf(now, view, held),
          drawn,
        ]
      },
    }
  }),
)
