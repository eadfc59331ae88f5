import { lastRevision, type Project, saveProject } from '../detail'
import type { Drawing } from '../drawing'
import type { Some } from '../words'
import type { Sheets } from './format'

/** Sheets of a project with what the file says of itself, and with the project in them unless it is left out. */
export const projectSheets = (
  project: Project,
  drawings: Some<Drawing>,
  { model = true }: { readonly model?: boolean } = {},
): Sheets => {
  const { author, number, name, office } = project.title
  return {
    drawings,
    information: {
      title: drawings[0].title,
      author,
      subject: number,
      keywords: [name, office].filter(it => it !== ''),
      // The day of the revision: the day of writing would change the bytes.
      dated: lastRevision(project)?.date ?? '',
    },
    ...(model && { model: saveProject(project) }),
  }
}
