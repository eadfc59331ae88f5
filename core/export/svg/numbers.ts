/** A length in mm to a thousandth, the shortest way to write it. */
export const mm = (value: number): string => {
  const thousandths = Math.round(value * 1000)
  return thousandths === 0 ? '0' : String(thousandths / 1000)
}
