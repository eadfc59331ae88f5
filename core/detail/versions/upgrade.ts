/** A project as plain JSON, of any version. */
export type Plain = Readonly<Record<string, unknown>>

/** Turns a file of one version into the next. It works on plain JSON: the model of the older version is gone. */
export type Upgrade = { readonly from: number; readonly apply: (plain: Plain) => Plain }

/** What is plain in a place of a file, or nothing where something else stands there. */
export const plainAt = (value: unknown): Plain =>
  // An object that is no list has string keys.
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Plain) : {}
