/** Whether two plain values say the same. Shared parts are not looked into, so neighbouring steps compare quickly. */
export const isAlike = (a: unknown, b: unknown): boolean => {
  if (Object.is(a, b)) return true
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false
  if (Array.isArray(a) !== Array.isArray(b)) return false
  const [left, right] = [Object.entries(a), new Map<string, unknown>(Object.entries(b))]
  return (
    left.length === right.size && left.every(([key, it]) => right.has(key) && isAlike(it, right.get(key)))
  )
}
