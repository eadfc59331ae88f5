import { randomUUID } from 'node:crypto'

/**
 * The paths that the user chose in a dialog or handed over at the start. The window only ever holds their tokens:
 * a path that it makes up leads nowhere.
 */
export type Places = {
  readonly keep: (path: string) => string
  readonly of: (token: string) => string | undefined
}

export const newPlaces = (): Places => {
  const paths = new Map<string, string>()
  return {
    keep: path => {
      const token = randomUUID()
      paths.set(token, path)
      return token
    },
    of: token => paths.get(token),
  }
}
