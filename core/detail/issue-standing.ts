import { digestOf } from './file/save'
import type { IssueState, Revision } from './issue'
import type { Project } from './model'

/**
 * What sheets of a project are now: as stated, or superseded when the design is no longer the one that its last
 * revision was issued with. Nothing is issued without a revision that keeps a digest.
 */
export const issueStanding = (project: Project): IssueState | 'superseded' => {
  const { status = 'draft' } = project.title
  if (status !== 'issued') return status
  const digest = lastRevision(project)?.digest
  if (digest === undefined) return 'draft'
  return digest === designDigest(project) ? 'issued' : 'superseded'
}

/** The newest line of the revision table. */
export const lastRevision = ({ title }: Project): Revision | undefined => title.revisions?.at(-1)

/**
 * The digest of a design without its revisions and their state, so that a revision can keep it: everything that is
 * designed and every other field of the title block counts.
 */
export const designDigest = (project: Project): string => {
  const { revisions: _revisions, status: _status, ...title } = project.title
  return digestOf({ ...project, title })
}
