/** How far the sheets of a project have come. */
export const issueStates = ['draft', 'for-comment', 'issued'] as const
export type IssueState = (typeof issueStates)[number]

/** One line of the revision table. An issued one keeps the digest of the design that it was issued with. */
export type Revision = {
  readonly index: string
  /** day of the revision, `2026-03-14` */
  readonly date: string
  readonly note: string
  readonly digest?: string
}
