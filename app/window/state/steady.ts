/**
 * Keeps the value before where the next one says the same. What is computed anew with every frame of a drag, but mostly
 * comes out alike, then changes nothing in the page.
 */
export const steady = <T>(isAlike: (a: T, b: T) => boolean): ((next: T) => T) => {
  let last: { readonly value: T } | undefined
  return next => {
    if (last === undefined || !isAlike(last.value, next)) last = { value: next }
    return last.value
  }
}

/** The same member by member of a list, each known by its key; a list of which no member is new is the very list before. */
export const steadyList = <T>(
  keyOf: (it: T) => string,
  isAlike: (a: T, b: T) => boolean = saysSame,
): ((next: readonly T[]) => readonly T[]) => {
  let last: readonly T[] = []
  let byKey: ReadonlyMap<string, T> = new Map()
  return next => {
    const members = next.map(it => {
      const was = byKey.get(keyOf(it))
      return was !== undefined && isAlike(was, it) ? was : it
    })
    if (members.length !== last.length || members.some((it, at) => it !== last[at])) {
      last = members
      byKey = new Map(members.map(it => [keyOf(it), it]))
    }
    return last
  }
}

/** Whether two plain values say the same. */
export const saysSame = (a: unknown, b: unknown): boolean =>
  a === b || JSON.stringify(a) === JSON.stringify(b)
