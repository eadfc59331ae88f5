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
