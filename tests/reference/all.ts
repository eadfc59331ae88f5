import { compareHeat, heatCase, spoiledHeat } from './heat-case'
import { type ReferenceCase, caseFiles } from './subject'

/** Every published case that this build is held to, whatever its subject. */
export const referenceCases: readonly ReferenceCase[] = [
  ...caseFiles('heat').map(({ id, text }): ReferenceCase => {
    const it = heatCase.parse(JSON.parse(text))
    return {
      id: `heat/${id}`,
      title: it.title,
      source: it.source,
      run: () => compareHeat(it),
      runSpoiled: () => compareHeat(spoiledHeat(it)),
    }
  }),
]
