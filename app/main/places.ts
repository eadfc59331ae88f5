import { randomUUID } from 'node:crypto'

/**
 * The paths that the user chose in a dialog, dropped, or handed over at the start. The window only ever holds their
 * tokens: a path that it makes up leads nowhere.
 */
export type Places = {
  /** the token of a path; the same path always has the same one */
  readonly keep: (path: string) => string
  readonly of: (token: string) => string | undefined
}

export const newPlaces = (): Places => {
  const paths = new Map<string, string>()
  const tokens = new Map<string, string>()
  return {
    keep: path => {
      const token = tokens.get(path) ?? randomUUID()
      tokens.set(path, token)
      paths.set(token, path)
      return token
    },
    of: token => paths.get(token),
  }
}
