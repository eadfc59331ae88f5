/** Even steps of 1, 2 or 5 from nothing up to at least a value, about as many as asked. */
export const niceSteps = (most: number, count: number): readonly number[] => {
  const raw = most / count
  const power = 10 ** Math.floor(Math.log10(raw))
  const step = ([1, 2, 5, 10].find(it => it * power >= raw) ?? 10) * power
  return Array.from({ length: Math.ceil(most / step - 1e-9) + 1 }, (_, i) => i * step)
}
