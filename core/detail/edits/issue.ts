import { z } from 'zod'
import { ok, refused } from '../../units'
import { filled, words } from '../../words'
import { type EditKind, titleTexts } from '../edit'
import { issueStates } from '../issue'
import { designDigest } from '../issue-standing'

/** Writes a text of the title block. */
export const entitle: EditKind<'entitle'> = {
  kind: 'entitle',
  schema: z.strictObject({ kind: z.literal('entitle'), text: z.enum(titleTexts), to: z.string().max(200) }),
  apply: (project, { text, to }) => {
    const { approver: _approver, ...title } = project.title
    return ok({
      ...project,
      title: text === 'approver' && to === '' ? title : { ...project.title, [text]: to },
    })
  },
}

/** Puts the sheets of a project to a state. What is issued needs a revision of its own, with another index. */
export const issue: EditKind<'issue'> = {
  kind: 'issue',
  schema: z.strictObject({
    kind: z.literal('issue'),
    status: z.enum(issueStates),
    revision: z
      .strictObject({ index: z.string().min(1), date: z.iso.date(), note: z.string() })
      .exactOptional(),
  }),
  apply: (project, { status, revision }) => {
    const { revisions = [] } = project.title
    if (revision === undefined)
      return status === 'issued'
        ? refused({ at: 'revision', say: needsOne })
        : ok({ ...project, title: { ...project.title, status } })
    if (!z.iso.date().safeParse(revision.date).success)
      return refused({ at: 'date', say: filled(noDay, revision.date) })
    if (revisions.some(it => it.index === revision.index))
      return refused({ at: 'index', say: filled(taken, revision.index) })
    const kept = status === 'issued' ? { ...revision, digest: designDigest(project) } : revision
    return ok({ ...project, title: { ...project.title, status, revisions: [...revisions, kept] } })
  },
}

const needsOne = words(
  'what is issued needs a revision: index, day and note',
  'zur Ausgabe gehört eine Änderung mit Index, Tag und Vermerk',
)
const noDay = words('“{0}” is no day like 2026-03-14', '„{0}“ ist kein Tag wie 2026-03-14')
const taken = words('there is a revision {0} already', 'eine Änderung {0} gibt es schon')
